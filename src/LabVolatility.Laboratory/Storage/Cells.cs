using System.Globalization;
using System.Text.Json;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Cells read behind the program's back, where any nonsense may stand.</summary>
internal static class Cells
{
    private const long EarliestMicroseconds = -62_135_596_800_000_000;
    private const long LatestMicroseconds = 253_402_300_799_999_999;

    public static string Json(string text)
    {
        try
        {
            return CanonicalText.OfJson(text);
        }
        catch (JsonException)
        {
            return Unreadable(text);
        }
    }

    public static string Instant(long microseconds) =>
        microseconds is >= EarliestMicroseconds and <= LatestMicroseconds
            ? CanonicalText.OfInstant(Storage.Instant.FromMicroseconds(microseconds))
            : Unreadable(microseconds);

    /// <summary>Text that no value has, so that the row is found.</summary>
    public static string Unreadable(object cell) =>
        $"unreadable {cell.GetType().Name} {Convert.ToString(cell, CultureInfo.InvariantCulture)}";
}
