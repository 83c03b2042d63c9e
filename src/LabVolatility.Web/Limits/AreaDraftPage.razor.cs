using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Drafts an area of the laboratory's own, or its next version.</summary>
public sealed partial class AreaDraftPage : LabPage
{
    private AreaEntry _entry = new();
    private IReadOnlyList<Problem> _problems = [];
    private bool _busy;

    public override string Title => string.IsNullOrEmpty(From) ? "Draft an area" : $"Draft a new version of {From}";

    public override Right Needs => Right.ManageReferenceData;

    /// <summary>The area whose next version is drafted.</summary>
    [SupplyParameterFromQuery(Name = "from")]
    private string? From { get; set; }

    [Inject]
    private ReadArea Read { get; set; } = null!;

    [Inject]
    private KeepArea Keep { get; set; } = null!;

    protected override bool KeepsTyping => true;

    protected override bool Concerns(Notice notice) => !string.IsNullOrEmpty(From) && notice.Changes<LaboratoryArea>();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        var earlier = string.IsNullOrEmpty(From) ? null : await Read.Run(From, cancellationToken);
        if (!string.IsNullOrEmpty(From) && earlier is not { Versions.Count: > 0 })
            Missing = $"There is no area {From} of the laboratory's own.";
        else if (earlier is not null)
            _entry = AreaEntry.Of(earlier.Versions[0].Area);
        else
            _entry = new AreaEntry { Windows = { new WindowEntry() } };
    }

    private async Task DraftAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            if (_entry.Read(out _problems) is not { } draft)
                return;
            var answer = await Keep.Draft(await ActorNowAsync(), draft, Leaving);
            _problems = answer.Problems;
            if (answer.Ok)
                Addresses.NavigateTo($"{LimitWords.Address(draft.Code)}#versions");
        }
        finally
        {
            _busy = false;
        }
    }
}
