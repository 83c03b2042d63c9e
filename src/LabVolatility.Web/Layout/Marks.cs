using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Web.Layout;

/// <summary>From the words of the domain to the status mark that shows them.</summary>
public static class Marks
{
    public static Mark Of(Outcome outcome) => outcome switch
    {
        Outcome.Conforms => Mark.Conforms,
        Outcome.DoesNotConform => Mark.DoesNotConform,
        Outcome.NotDecided => Mark.NotDecided,
        Outcome.Incomplete => Mark.Incomplete,
        _ => Mark.NoLimit,
    };

    /// <summary>The mark of the decision in force; null is a batch nobody decided on yet.</summary>
    public static Mark Of(DecisionKind? decision) => decision switch
    {
        DecisionKind.Release => Mark.Released,
        DecisionKind.Concession => Mark.Concession,
        DecisionKind.Hold => Mark.OnHold,
        DecisionKind.Reject => Mark.Rejected,
        DecisionKind.Withdraw => Mark.Withdrawn,
        _ => Mark.Undecided,
    };

    public static Mark Of(FactStatus status) => status switch
    {
        FactStatus.FromMemory => Mark.FromMemory,
        FactStatus.Published => Mark.Published,
        FactStatus.CommonPractice => Mark.CommonPractice,
        _ => Mark.LaboratoryOwn,
    };
}
