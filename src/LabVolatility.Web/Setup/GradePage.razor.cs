using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>Adds a grade, or changes one.</summary>
public sealed partial class GradePage : LabPage
{
    private GradeEntry _entry = new();
    private IReadOnlyList<Problem> _problems = [];
    private bool _busy;

    public override string Title => Code is null ? "Add a grade" : $"Grade {Code}";

    public override Right Needs => Right.ManageReferenceData;

    [Parameter]
    public string? Code { get; set; }

    [Inject]
    private ReadGrades Read { get; set; } = null!;

    [Inject]
    private KeepGrade Keep { get; set; } = null!;

    protected override bool KeepsTyping => true;

    protected override bool Concerns(Notice notice) => Code is not null && notice.Changes<Grade>() && notice.IsAbout<Grade>(Code);

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _entry = new GradeEntry { Tests = { new GradeTestEntry() } };
        if (Code is null)
            return;
        if ((await Read.Run(cancellationToken)).FirstOrDefault(g => g.Code == Code) is { } grade)
            _entry = GradeEntry.Of(grade);
        else
            Missing = $"There is no grade {Code}.";
    }

    // What the other person saved has been told: saving once more is deliberate.
    private async Task SeeAnewAsync()
    {
        _entry.Version = (await Read.Run(Leaving)).First(g => g.Code == Code).Version;
        _problems = [.. _problems, new Problem("", "Save again to put what you typed in its place.")];
    }

    private async Task SaveAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            if (_entry.Read(out _problems) is not { } grade)
                return;
            var actor = await ActorNowAsync();
            var answer = Code is null ? await Keep.Add(actor, grade, Leaving) : await Keep.Change(actor, _entry.Version, grade, Leaving);
            _problems = answer.Problems;
            if (answer.Kind == AnswerKind.Conflict && Code is not null)
                await SeeAnewAsync();
            if (answer.Ok)
                Addresses.NavigateTo("/setup/grades");
        }
        finally
        {
            _busy = false;
        }
    }
}
