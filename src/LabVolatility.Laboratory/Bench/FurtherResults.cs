using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Bench;

/// <summary>The rule "further results are agreed beforehand": nobody measures until it fits.</summary>
/// <remarks>A duplicate may be made without being asked for, common practice: both results count, so it can't be used to choose.</remarks>
public static class FurtherResults
{
    public const string Rule = "further-results-are-agreed";

    private const int WithDuplicate = 2;

    /// <summary>The refusal where neither the plan nor a step that was taken asks for another result.</summary>
    /// <param name="sample">The sample's number.</param>
    /// <param name="test">The assigned test.</param>
    /// <param name="made">Determinations of it that aren't set aside.</param>
    public static Problem? Check(string sample, AssignedTest test, int made) => made < Math.Max(test.Wanted, WithDuplicate)
        ? null
        : new Problem(
            "/method",
            $"Sample {sample} has {made} results by {test.Method}, which are all that is asked for. "
            + "Another one follows from a step of the tree, which the shift chemist takes on the batch, or once a result was set aside for an assignable cause.",
            Rule);
}
