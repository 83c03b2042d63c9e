using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The decisions this person may sign now, and in words what stands against the rest.</summary>
public sealed partial class DecisionBar : ComponentBase
{
    private bool _concession;

    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<DecisionKind> Asked { get; set; }

    [Parameter]
    public EventCallback IssueAsked { get; set; }

    private IReadOnlyList<DecisionKind> Offered { get; set; } = [];

    private IReadOnlyList<string> Against { get; set; } = [];

    private bool MayIssue => Sheet.LacksCertificate && Actor.May(Right.Decide);

    protected override void OnParametersSet()
    {
        // A release that stands has been answered; what is asked for is the next one.
        var open = OrderOfDecisions.Check(Sheet.Assessed.InForce, DecisionKind.Release) is null;
        _concession = open && Actor.May(Right.GrantConcession) && Sheet.Evidence.Outcome is not (Outcome.Conforms or Outcome.NoLimit);
        var wanted = _concession ? DecisionKind.Concession : DecisionKind.Release;
        Against = !open ? [] : Actor.May(Right.Decide) ? [.. Refusals(wanted)] : Sheet.Evidence.Blocks;
        Offered = [.. Enum.GetValues<DecisionKind>().Where(IsOffered)];
    }

    private static string? Look(DecisionKind kind) => kind switch
    {
        DecisionKind.Release or DecisionKind.Concession => "main",
        DecisionKind.Reject or DecisionKind.Withdraw => "grave",
        _ => null,
    };

    private bool IsOffered(DecisionKind kind) =>
        Actor.May(DecisionRights.For(kind)) && OrderOfDecisions.Check(Sheet.Assessed.InForce, kind) is null
        && (kind is not (DecisionKind.Release or DecisionKind.Concession) || !Refusals(kind).Any())
        && (kind != DecisionKind.Hold || Sheet.Standing?.Kind != DecisionKind.Hold);

    // The same rules that the act itself holds, asked beforehand: nobody types a password in vain.
    private IEnumerable<string> Refusals(DecisionKind kind) => EvidenceRules
        .Check(Sheet.Evidence, new DecisionRequest(Guid.Empty, Sheet.Batch.Number, kind, 0, Sheet.Assessed.EvidenceHash, null, ""), Actor)
        .Select(p => p.Message);
}
