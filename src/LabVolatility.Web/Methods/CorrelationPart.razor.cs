using System.Globalization;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>The laboratory's own correlation of a method whose correlation isn't public: drafted, approved and withdrawn here.</summary>
public sealed partial class CorrelationPart : ComponentBase
{
    private CorrelationDraft _draft = new();
    private IReadOnlyList<Problem> _problems = [];
    private ConfirmDialog? _confirm;
    private CorrelationLine? _withdrawing;
    private string? _reason;
    private string? _done;
    private bool _busy;

    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    /// <summary>All that were entered, the newest first.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<CorrelationLine> Lines { get; set; } = [];

    /// <summary>The one in force today; null: none.</summary>
    [Parameter]
    public Correlation? InForce { get; set; }

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    /// <summary>Raised once an entry changed.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private KeepCorrelation Keep { get; set; } = null!;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private async Task DraftAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            if (_draft.Read(Method, out _problems) is not { } entry)
                return;
            var answer = await Keep.Draft(await People.GetAsync(), entry);
            if (answer.Ok)
                _draft = new CorrelationDraft();
            await AfterAsync(answer, "The draft is saved. Another quality manager approves it here.");
        }
        finally
        {
            _busy = false;
        }
    }

    private async Task ApproveAsync(CorrelationLine line)
    {
        var act = $"Approve correlation no. {line.Entry.Number}";
        if (_confirm is null || !await _confirm.AskAsync(act, $"From {Day(line.Entry.From)} on, determinations by {Method.Designation} report a DVPE by it. Determinations reported before stay as they are."))
            return;
        await AfterAsync(await Keep.Approve(await People.GetAsync(), line.Entry.Id), $"{act}: done.");
    }

    private async Task WithdrawAsync()
    {
        if (_withdrawing is not { } line)
            return;
        var answer = await Keep.Withdraw(await People.GetAsync(), line.Entry.Id, _reason);
        if (answer.Ok)
            (_withdrawing, _reason) = (null, null);
        await AfterAsync(answer, "Withdrawn.");
    }

    private async Task AfterAsync(Answer<Guid> answer, string done)
    {
        _problems = answer.Problems;
        _done = answer.Ok ? done : null;
        if (answer.Kind != AnswerKind.Invalid)
            await Changed.InvokeAsync();
    }
}
