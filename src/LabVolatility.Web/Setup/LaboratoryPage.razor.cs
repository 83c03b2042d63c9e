using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>What the laboratory is called, by which clock it lives, whom to call.</summary>
public sealed partial class LaboratoryPage
{
    private LaboratoryForm _form = new();
    private IReadOnlyList<Problem> _problems = [];
    private DateTimeOffset? _saved;
    private bool _busy;

    public override string Title => "Setup: laboratory";

    public override Right Needs => Right.Administer;

    [Inject]
    private ReadSettings Read { get; set; } = null!;

    [Inject]
    private ChangeSettings Change { get; set; } = null!;

    [Inject]
    private LaboratoryFacts Facts { get; set; } = null!;

    protected override bool KeepsTyping => true;

    protected override bool Concerns(Notice notice) => notice.Changes<LaboratorySettings>();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        if (await Read.Run(cancellationToken) is { } settings)
            _form = LaboratoryForm.Of(settings);
    }

    private async Task SaveAsync()
    {
        if (_busy)
            return;
        _busy = true;
        _saved = null;
        try
        {
            await SaveAsync(_form.Read(out _problems));
        }
        finally
        {
            _busy = false;
        }
    }

    private async Task SaveAsync(SettingsChange? change)
    {
        if (change is null)
            return;
        var answer = await Change.Run(await ActorNowAsync(), change, Leaving);
        _problems = answer.Problems;
        if (answer is { Kind: AnswerKind.Conflict, Value: { } now })
        {
            // What the other person saved has been told: saving once more is deliberate.
            _form.Version = now.Version;
            _problems = [.. _problems, new Problem("", "Save again to put what you typed in its place.")];
        }

        if (!answer.Ok)
            return;
        await Facts.RefreshAsync(Leaving);
        _form = LaboratoryForm.Of(answer.Value!);
        _saved = Clock.Now;
    }
}
