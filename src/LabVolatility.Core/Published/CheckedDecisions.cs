using System.Globalization;
using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Published;

/// <summary>Works out what the checks of decision rules and precision ask for.</summary>
internal static class CheckedDecisions
{
    // kind, limit, decimals, value
    public static decimal Meets(string[] arguments)
    {
        var input = new LimitInput
        {
            Maximum = Edge(arguments, "max"),
            Minimum = Edge(arguments, "min"),
            Digits = int.Parse(arguments[2], CultureInfo.InvariantCulture),
            Value = PublishedChecks.Number(arguments[3]),
        };
        return Conformity.Judge(input).Outcome == Outcome.Conforms ? 1m : 0m;
    }

    // kind, limit, R, r, k, confidence
    public static decimal? ReproducibilityOfMean(string[] arguments) =>
        Uncertainty.OfMean(PublishedChecks.Number(arguments[2]), PublishedChecks.Number(arguments[3]), int.Parse(arguments[4], CultureInfo.InvariantCulture));

    public static decimal? Inner(string[] arguments)
    {
        var found = Guarded(arguments);
        return arguments[0] == "max" ? found.AcceptanceMaximum : found.AcceptanceMinimum;
    }

    public static decimal? Outer(string[] arguments)
    {
        var found = Guarded(arguments);
        return arguments[0] == "max" ? found.RejectionMaximum : found.RejectionMinimum;
    }

    // limit, slope and offset of R = slope · (limit + offset)
    public static decimal Recipient(string[] arguments)
    {
        var limit = PublishedChecks.Number(arguments[0]);
        var bigR = PublishedChecks.Number(arguments[1]) * (limit + PublishedChecks.Number(arguments[2]));
        return limit + Uncertainty.Guard(bigR, 0.95m);
    }

    // r, n
    public static decimal Divergent(string[] arguments) =>
        Duplicates.LargestDivergence(PublishedChecks.Number(arguments[0]), int.Parse(arguments[1], CultureInfo.InvariantCulture));

    // R, r, k1, k2
    public static decimal? Difference(string[] arguments) => TwoLaboratories.LargestDifference(
        PublishedChecks.Number(arguments[0]), PublishedChecks.Number(arguments[1]),
        int.Parse(arguments[2], CultureInfo.InvariantCulture), int.Parse(arguments[3], CultureInfo.InvariantCulture));

    // kind, limit, R, P
    public static decimal? Assigned(string[] arguments)
    {
        var limit = PublishedChecks.Number(arguments[1]);
        var found = AssignedTestValue.Judge(new AssignedTestInput(
            limit, limit, PublishedChecks.Number(arguments[2]), Edge(arguments, "min"), Edge(arguments, "max"), 1,
            PublishedChecks.Number(arguments[3]), Comparison.Absolute));
        return found.AcceptanceMaximum ?? found.AcceptanceMinimum;
    }

    // minimum, maximum, value, u
    public static decimal Beyond(string[] arguments) => Uncertainty.ProbabilityBeyond(
        PublishedChecks.Number(arguments[2]), PublishedChecks.NumberOrNone(arguments[0]), PublishedChecks.NumberOrNone(arguments[1]),
        PublishedChecks.Number(arguments[3]));

    public static decimal Deviate(string[] arguments) =>
        Rounding.ToPlaces((decimal)NormalDeviate.Of((double)PublishedChecks.Number(arguments[0])), 12);

    private static LimitOutcome Guarded(string[] arguments) => Conformity.Judge(new LimitInput
    {
        Maximum = Edge(arguments, "max"),
        Minimum = Edge(arguments, "min"),
        Digits = 1,
        Value = PublishedChecks.Number(arguments[1]),
        Rule = DecisionRule.Guarded,
        Reproducibility = PublishedChecks.Number(arguments[2]),
        Repeatability = PublishedChecks.Number(arguments[3]),
        Count = int.Parse(arguments[4], CultureInfo.InvariantCulture),
        Confidence = PublishedChecks.Number(arguments[5]),
    });

    private static decimal? Edge(string[] arguments, string kind) =>
        arguments[0] == kind ? PublishedChecks.Number(arguments[1]) : null;
}
