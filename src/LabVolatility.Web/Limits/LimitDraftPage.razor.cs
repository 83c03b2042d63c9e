using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Drafts a limit of the laboratory's own in an area, or its next version.</summary>
public sealed partial class LimitDraftPage : LabPage
{
    private LimitEntry _entry = new();
    private IReadOnlyList<string> _grades = [];
    private IReadOnlyList<Problem> _problems = [];
    private bool _busy;

    public override string Title => From is null ? $"Draft a limit in {Code}" : $"Draft a new version of {_entry.Key}";

    public override Right Needs => Right.ManageReferenceData;

    [Parameter]
    public string Code { get; set; } = "";

    /// <summary>The version that the next one starts from.</summary>
    [SupplyParameterFromQuery(Name = "from")]
    private Guid? From { get; set; }

    [Inject]
    private ReadArea Read { get; set; } = null!;

    [Inject]
    private KeepLimit Keep { get; set; } = null!;

    protected override bool KeepsTyping => true;

    protected override bool Concerns(Notice notice) => notice.ChangesLimits();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        var sheet = await Read.Run(Code, cancellationToken);
        var earlier = sheet?.Limits.FirstOrDefault(v => v.Limit.Id == From)?.Limit;
        if (sheet is null)
            Missing = $"There is no area {Code}.";
        else if (From is not null && earlier is null)
            Missing = "There is no such version of a limit.";
        _grades = sheet?.Grades ?? [];
        _entry = earlier is null ? new LimitEntry() : LimitEntry.Of(earlier);
    }

    private async Task DraftAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            if (_entry.Read(Code, out _problems) is not { } draft)
                return;
            var answer = await Keep.Draft(await ActorNowAsync(), draft, Leaving);
            _problems = answer.Problems;
            if (answer.Ok)
                Addresses.NavigateTo($"{LimitWords.Address(Code)}#versions");
        }
        finally
        {
            _busy = false;
        }
    }
}
