using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Bench;

/// <summary>The rule "further results are agreed beforehand": nobody measures until it fits.</summary>
public static class FurtherResults
{
    public const string Rule = "further-results-are-agreed";

    /// <summary>The refusal where neither the plan nor a step that was taken asks for another result.</summary>
    /// <param name="sample">The sample's number.</param>
    /// <param name="test">The assigned test.</param>
    /// <param name="made">Determinations of it that aren't set aside.</param>
    public static Problem? Check(string sample, AssignedTest test, int made) => made < test.Wanted
        ? null
        : new Problem(
            "/method",
            $"Sample {sample} has the {(test.Wanted == 1 ? "result" : $"{test.Wanted} results")} by {test.Method} that {(test.Wanted == 1 ? "is" : "are")} asked for. "
            + "Another one follows from a step of the tree, which the shift chemist takes on the batch, or once a result was set aside for an assignable cause.",
            Rule);
}
