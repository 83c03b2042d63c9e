using System.Globalization;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api;

/// <summary>A reported quantity.</summary>
public sealed record ResultAnswer(
    string Quantity, decimal Value, string Reported, string Unit, string Suffix, string? Correlation, string? Equation, string Source, string Status)
{
    public static ResultAnswer Of(ReportedResult result) => new(
        result.Quantity, Rounding.Trim(result.Value), result.Reported, result.Unit.Symbol(), result.Suffix,
        TextOrNull(result.Correlation), TextOrNull(result.Equation), result.Source, result.Status.Text());

    /// <summary>A result as it is kept.</summary>
    public static ResultAnswer Of(Result result) => new(
        result.Quantity, decimal.Parse(result.Exact, CultureInfo.InvariantCulture), result.Reported, result.Unit, result.Suffix,
        TextOrNull(result.Correlation), TextOrNull(result.Equation), result.Source, result.Status.Text());

    private static string? TextOrNull(string text) => text.Length == 0 ? null : text;
}
