using System.Globalization;

namespace LabVolatility.Web.Api;

/// <summary>A JSON number read as a decimal without losing a digit.</summary>
internal static class ExactNumber
{
    private const int MostDigits = 28;
    private const int LongestText = 100;

    public const string Problem = "It must be a number that a decimal holds exactly: at most 28 digits, below 7.9e28.";

    /// <summary>False for a number that would have to be cut or is too large.</summary>
    public static bool TryRead(string json, out decimal value)
    {
        value = 0m;
        if (json.Length > LongestText)
            return false;
        var parts = json.TrimStart('-').Split('e', 'E');
        var point = parts[0].IndexOf('.', StringComparison.Ordinal);
        var digits = parts[0].Replace(".", "", StringComparison.Ordinal);
        var exponent = 0;
        if (parts.Length == 2 && !int.TryParse(parts[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out exponent))
            return false;
        var significant = digits.Trim('0');
        if (significant.Length == 0)
            return true;
        if (significant.Length > MostDigits || Math.Abs((long)exponent) > LongestText)
            return false;
        var trailing = digits.Length - digits.TrimEnd('0').Length;
        var places = (point < 0 ? 0 : parts[0].Length - point - 1) - exponent - trailing;
        return places <= MostDigits
            && decimal.TryParse(json, NumberStyles.Float, CultureInfo.InvariantCulture, out value);
    }

    /// <summary>Decimals as written: "60.0" has one.</summary>
    public static int PlacesWritten(string json)
    {
        var point = json.IndexOf('.', StringComparison.Ordinal);
        return point < 0 || json.Contains('e', StringComparison.OrdinalIgnoreCase) ? 0 : json.Length - point - 1;
    }
}
