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

    /// <summary>In the unit of all answers that were not asked for another, whatever unit it was read in.</summary>
    public static ResultAnswer InKilopascals(ReportedResult result)
    {
        if (result.Unit == PressureUnit.Kilopascal)
            return Of(result);
        var value = PressureUnits.Convert(result.Value, result.Unit, PressureUnit.Kilopascal);
        return Of(result with
        {
            Value = value,
            Unit = PressureUnit.Kilopascal,
            Reported = Rounding.Text(value, PressureResolution.Places(PressureUnit.Kilopascal)),
        });
    }

    /// <summary>A result as it is kept.</summary>
    public static ResultAnswer InKilopascals(Result result) => InKilopascals(StoredDetermination.Report(result));

    private static string? TextOrNull(string text) => text.Length == 0 ? null : text;
}
