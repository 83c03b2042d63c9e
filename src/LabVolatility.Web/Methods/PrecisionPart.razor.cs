using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>r and R of a method: in force, drafts, withdrawn; drafted, approved and withdrawn here.</summary>
public sealed partial class PrecisionPart : ComponentBase
{
    private IReadOnlyList<Problem> _problems = [];
    private ConfirmDialog? _confirm;
    private PrecisionLine? _withdrawing;
    private string? _reason;
    private string? _done;
    private bool _busy;

    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<PrecisionLine> Lines { get; set; } = [];

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    /// <summary>Raised once an entry changed.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private KeepPrecision Keep { get; set; } = null!;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    private IReadOnlyList<PrecisionStatement> InForce => [.. Lines.Where(l => l.InForce).Select(MethodWords.Statement)];

    private IEnumerable<(string Caption, IReadOnlyList<PrecisionLine> Lines)> Groups => new (string Caption, IReadOnlyList<PrecisionLine> Lines)[]
    {
        ("In force", [.. Lines.Where(l => l.InForce)]),
        ("Drafts: they count for nothing yet", [.. Lines.Where(l => l.IsDraft)]),
        ("Withdrawn or replaced", [.. Lines.Where(l => l.Entry.WithdrawnAt is not null)]),
    }.Where(g => g.Lines.Count > 0);

    private async Task ApproveAsync(PrecisionLine line)
    {
        var act = $"Approve precision of {line.Entry.Quantity}";
        if (_confirm is null || !await _confirm.AskAsync(act, $"r and R of {Method.Designation}, edition {line.Entry.Edition}, count from now on; an entry for the same container and range is replaced. Releases whose period of use is not over are marked for review."))
            return;
        var answer = await Keep.Approve(await People.GetAsync(), line.Entry.Id);
        await AfterAsync(answer, $"{act}: done.");
    }

    private async Task WithdrawAsync()
    {
        if (_busy || _withdrawing is not { } line)
            return;
        _busy = true;
        try
        {
            var answer = await Keep.Withdraw(await People.GetAsync(), line.Entry.Id, _reason);
            if (answer.Ok)
                (_withdrawing, _reason) = (null, null);
            await AfterAsync(answer, "Withdrawn.");
        }
        finally
        {
            _busy = false;
        }
    }

    private async Task DraftedAsync()
    {
        (_problems, _done) = ([], "The draft is saved. Another quality manager approves it here.");
        await Changed.InvokeAsync();
    }

    private async Task AfterAsync(Answer<Guid> answer, string done)
    {
        _problems = answer.Problems;
        _done = answer.Ok ? done : null;
        if (answer.Kind != AnswerKind.Invalid)
            await Changed.InvokeAsync();
    }
}
