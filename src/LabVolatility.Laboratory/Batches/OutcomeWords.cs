using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Outcomes as verbs: "the batch …".</summary>
public static class OutcomeWords
{
    public static string Text(Outcome outcome) => outcome switch
    {
        Outcome.Conforms => "conforms",
        Outcome.DoesNotConform => "does not conform",
        Outcome.NotDecided => "is not decided",
        Outcome.Incomplete => "is incomplete",
        Outcome.NoLimit => "has no limit in force",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "No such outcome."),
    };
}
