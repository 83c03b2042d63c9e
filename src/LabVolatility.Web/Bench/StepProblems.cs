using System.Globalization;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Bench;

/// <summary>What stands below a field of the bench.</summary>
internal static class StepProblems
{
    /// <summary>What is wrong with a field: as typed, or as the report answered.</summary>
    public static string? Of(string field, BenchPreview? preview, IReadOnlyList<Problem> reported) =>
        (preview?.Problems.FirstOrDefault(p => p.Field == field) ?? reported.FirstOrDefault(p => p.Field == field))?.Message;

    /// <summary>"62,1 → 62.1 kPa"; null where nothing was understood.</summary>
    public static string? Echo(TypedReading? reading, string? whole = null) =>
        reading is null ? null : $"{reading.Typed.Trim()} → {reading.Value.ToString(CultureInfo.InvariantCulture)} {whole ?? Unit(reading.Unit)}".TrimEnd();

    private static string Unit(string symbol) => symbol.Replace("deg", "°", StringComparison.Ordinal);
}
