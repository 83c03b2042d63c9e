using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.Batches;

/// <summary>What a person may sign on a batch now, and in words what stands against its release.</summary>
/// <param name="Kinds">The decisions that the act itself would take.</param>
/// <param name="Against">What stands against a release, or against a concession where that is what could be asked for.</param>
/// <param name="Concession">True where <paramref name="Against"/> speaks of a concession.</param>
public sealed record OfferedDecisions(IReadOnlyList<DecisionKind> Kinds, IReadOnlyList<string> Against, bool Concession)
{
    public static OfferedDecisions Of(BatchSheet sheet, Actor actor)
    {
        // A release that stands has been answered; what is asked for is the next one.
        var open = IsOpen(sheet);
        var concession = open && actor.May(Right.GrantConcession) && sheet.Evidence.Outcome is not (Outcome.Conforms or Outcome.NoLimit);
        var wanted = concession ? DecisionKind.Concession : DecisionKind.Release;
        return new OfferedDecisions(
            [.. Enum.GetValues<DecisionKind>().Where(kind => IsOffered(sheet, actor, kind))],
            !open ? [] : actor.May(Right.Decide) ? [.. Refusals(sheet, actor, wanted)] : sheet.Evidence.Blocks, concession);
    }

    /// <summary>True where a release may follow what is in force.</summary>
    public static bool IsOpen(BatchSheet sheet) => OrderOfDecisions.Check(sheet.Assessed.InForce, DecisionKind.Release) is null;

    private static bool IsOffered(BatchSheet sheet, Actor actor, DecisionKind kind) =>
        actor.May(DecisionRights.For(kind)) && OrderOfDecisions.Check(sheet.Assessed.InForce, kind) is null
        && (kind is not (DecisionKind.Release or DecisionKind.Concession) || !Refusals(sheet, actor, kind).Any())
        && (kind != DecisionKind.Hold || sheet.Standing?.Kind != DecisionKind.Hold);

    // The same rules that the act itself holds, asked beforehand: nobody types a password in vain.
    private static IEnumerable<string> Refusals(BatchSheet sheet, Actor actor, DecisionKind kind) => EvidenceRules
        .Check(sheet.Evidence, new DecisionRequest(Guid.Empty, sheet.Batch.Number, kind, 0, sheet.Assessed.EvidenceHash, null, ""), actor)
        .Select(p => p.Message);
}
