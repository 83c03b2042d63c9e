using System.Globalization;

namespace LabVolatility.Core.Quantities;

/// <summary>The one place where a number is rounded.</summary>
public static class Rounding
{
    /// <summary>Rounds half to even; negative <paramref name="places"/> round to tens, hundreds and so on.</summary>
    /// <param name="value">The unrounded value.</param>
    /// <param name="places">Decimals to keep, −20 to 28.</param>
    /// <exception cref="ArgumentOutOfRangeException">The places are outside −20 to 28.</exception>
    /// <remarks>Source: ASTM E29-13, rounding method (half to even from memory); 40 CFR 1090.50(a).</remarks>
    public static decimal ToPlaces(decimal value, int places)
    {
        if (places is < -20 or > 28)
            throw new ArgumentOutOfRangeException(nameof(places), places, "Decimals are −20 to 28.");
        return places >= 0 ? Math.Round(value, places, MidpointRounding.ToEven) : ToMultiple(value, -places);
    }

    /// <summary>The rounded value as text, with its zeros and with a point: "63.80".</summary>
    /// <param name="value">The unrounded value.</param>
    /// <param name="places">Decimals to keep, −20 to 28.</param>
    /// <exception cref="ArgumentOutOfRangeException">The places are outside −20 to 28.</exception>
    public static string Text(decimal value, int places)
    {
        var rounded = ToPlaces(value, places);
        var unsigned = rounded == 0 ? 0m : rounded;
        return unsigned.ToString($"F{Math.Max(places, 0)}", CultureInfo.InvariantCulture);
    }

    /// <summary>The value as it is, with a point, without zeros that say nothing: 63.7700 gives "63.77".</summary>
    public static string Plain(decimal value) =>
        Trim(value).ToString("0.############################", CultureInfo.InvariantCulture);

    /// <summary>For reading: as <see cref="Plain"/>, cut after six decimals with "…" where there are more.</summary>
    public static string Shown(decimal value)
    {
        var cut = Math.Round(value, 6, MidpointRounding.ToZero);
        return cut == value ? Plain(value) : Plain(cut) + "…";
    }

    /// <summary>The same number without trailing zeros.</summary>
    public static decimal Trim(decimal value) =>
        value == 0 ? 0m : value / 1.0000000000000000000000000000m;

    /// <summary>What is kept, in words: "1 decimal", "2 decimals", "whole numbers", "the nearest 100".</summary>
    internal static string Words(int places) => places switch
    {
        < 0 => $"the nearest 1{new string('0', -places)}",
        0 => "whole numbers",
        1 => "1 decimal",
        _ => $"{places} decimals",
    };

    private static decimal ToMultiple(decimal value, int zeros)
    {
        var step = 1m;
        for (var i = 0; i < zeros; i++)
            step *= 10m;
        var whole = decimal.Truncate(value / step);
        var rest = Math.Abs(value - (whole * step)) * 2m;
        var isUp = rest > step || (rest == step && whole % 2m != 0);
        return (isUp ? whole + Math.Sign(value) : whole) * step;
    }
}
