using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Batches;

/// <summary>What a person reads before they sign a decision: the act, its meaning, what will happen.</summary>
public static class SignWords
{
    public static SignRequest Request(DecisionKind kind, BatchSheet sheet) => new(
        Act(kind, sheet.Batch.Number), DecisionWords.Meaning(kind, sheet.Batch.Number), [.. Consequences(kind, sheet)], Reason(kind),
        ReasonIsDue: kind != DecisionKind.Release, Grave: kind is DecisionKind.Reject or DecisionKind.Withdraw);

    /// <summary>The act as it stands on a button.</summary>
    public static string Act(DecisionKind kind, string batch) => kind switch
    {
        DecisionKind.Release => $"Release batch {batch}",
        DecisionKind.Concession => $"Release batch {batch} under concession",
        DecisionKind.Hold => $"Hold batch {batch}",
        DecisionKind.Reject => $"Reject batch {batch}",
        _ => $"Withdraw the decision on batch {batch}",
    };

    public static string Done(DecisionKind kind) =>
        kind == DecisionKind.Withdraw ? "the decision is withdrawn" : $"it is {DecisionWords.State(kind)}";

    private static string Reason(DecisionKind kind) => kind switch
    {
        DecisionKind.Release => "Remark",
        DecisionKind.Concession => "Reason for the concession",
        DecisionKind.Hold => "Reason for the hold",
        DecisionKind.Reject => "Reason for the rejection",
        _ => "Reason for the withdrawal",
    };

    private static IEnumerable<string> Consequences(DecisionKind kind, BatchSheet sheet)
    {
        if (kind is DecisionKind.Release or DecisionKind.Concession)
        {
            yield return $"It may leave for {BatchWords.Of(sheet.Batch.Destinations)}, to be used {BatchWords.Period(sheet.Batch.From, sheet.Batch.Until)}.";
            if (BindingLimit.Of(sheet.Evidence) is { } limit)
                yield return $"The limit that binds is {BatchWords.Of(limit)} ({limit.Area}): {limit.Compared ?? "no value"} compared, {BatchWords.MarginBesideR(limit)}.";
            yield return sheet.Certificates.Count == 0
                ? "Its certificate is issued at once."
                : $"Certificate {sheet.Certificates[0].Number} gets revision {sheet.Certificates[0].Revision + 1}, which replaces the one before.";
            yield return "Results, limits and checks are kept as they are now. If one changes later, the decision is marked for review.";
        }
        else if (kind == DecisionKind.Withdraw)
        {
            yield return $"The batch is no longer {DecisionWords.State(sheet.Standing?.Kind ?? DecisionKind.Hold)}; both decisions stay visible.";
            if (sheet.Certificates is [{ Superseded: false } certificate, ..])
                yield return $"Certificate {certificate.Number} no longer holds: a recipient who checks it is told so. Tell those who have it.";
            foreach (var cargo in sheet.Cargoes.Where(c => c.Lost.All(l => l.Batch != sheet.Batch.Number)))
                yield return $"Cargo certificate {cargo.Number} of {cargo.Ship} no longer covers it.";
        }
        else
        {
            yield return kind == DecisionKind.Hold
                ? "It must not leave until another decision is signed."
                : "It must not be delivered as what it was made for. Only a withdrawal opens it again.";
        }
    }
}
