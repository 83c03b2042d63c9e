using System.Globalization;
using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Published;

/// <summary>Holds this program against the values that sources print, or that follow from them by hand.</summary>
/// <remarks>Source: checks.csv, row by row.</remarks>
public static class PublishedChecks
{
    /// <summary>Works out every check of the table, in its order.</summary>
    public static IReadOnlyList<PublishedCheck> Run() => [.. PublishedTable.Read("checks.csv").Select(Check)];

    private static PublishedCheck Check(PublishedRow row) => new(
        row.Text("what"), row.Text("source"), row.Status("status"), row.Number("expected"),
        WorkOut(row.Text("kind"), row.Text("arguments").Split('|')), row.Number("tolerance"));

    private static decimal? WorkOut(string kind, string[] arguments) => kind switch
    {
        "correlation" => CheckedEquations.Correlated(arguments[0], Number(arguments[1]), arguments[2]),
        "reported" => CheckedEquations.Reported(arguments[0], Number(arguments[1]), arguments[2], int.Parse(arguments[3], CultureInfo.InvariantCulture)),
        "predicted" => CheckedExpansions.Predicted(arguments),
        "gas" => CheckedExpansions.Gas(arguments),
        "gas-at-test" => CheckedExpansions.GasAtTest(arguments),
        "vapor" => CheckedExpansions.Vapor(arguments),
        "solubility" => CheckedExpansions.Solubility(arguments),
        "quotient" => CheckedExpansions.Quotient(arguments),
        "unit" => CheckedEquations.Converted(Number(arguments[0]), arguments[1], arguments[2]),
        "rounding" => CheckedEquations.Rounded(Number(arguments[0]), int.Parse(arguments[1], CultureInfo.InvariantCulture)),
        "meets" => CheckedDecisions.Meets(arguments),
        "mean-R" => CheckedDecisions.ReproducibilityOfMean(arguments),
        "inner" => CheckedDecisions.Inner(arguments),
        "outer" => CheckedDecisions.Outer(arguments),
        "recipient" => CheckedDecisions.Recipient(arguments),
        "divergent" => CheckedDecisions.Divergent(arguments),
        "difference" => CheckedDecisions.Difference(arguments),
        "two-laboratories" => CheckedDecisions.Assigned(arguments),
        "beyond" => CheckedDecisions.Beyond(arguments),
        "deviate" => CheckedDecisions.Deviate(arguments),
        "limit" => CheckedLimits.Edge(arguments),
        "in-force" => CheckedLimits.InForce(arguments),
        "allowance" => CheckedLimits.Allowance(arguments),
        _ => throw new InvalidDataException($"\"{kind}\" is no kind of check."),
    };

    internal static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    internal static decimal? NumberOrNone(string text) => text.Length == 0 ? null : Number(text);
}
