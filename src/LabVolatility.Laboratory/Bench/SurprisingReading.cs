using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Says where a total pressure is far from the last ones of its grade, and which slip of the hand would explain it.</summary>
/// <remarks>A question to the person, never a rule: what is measured stays as it was measured.</remarks>
public static class SurprisingReading
{
    private const int Fewest = 8;

    // A grade that hardly varies still gets this much to either side.
    private const decimal LeastRoomKpa = 2m;

    /// <param name="total">As typed.</param>
    /// <param name="recentKpa">The last total pressures of the grade by this method, in kPa.</param>
    /// <param name="grade">The grade, for the words.</param>
    /// <returns>The question in words; null where there is nothing to wonder at, or too little to compare with.</returns>
    public static string? Words(AbsolutePressure total, IReadOnlyList<decimal> recentKpa, string grade)
    {
        if (recentKpa.Count < Fewest)
            return null;
        var (low, high) = (recentKpa.Min(), recentKpa.Max());
        var room = Math.Max(high - low, LeastRoomKpa);
        var kpa = total.In(PressureUnit.Kilopascal);
        if (kpa >= low - room && kpa <= high + room)
            return null;
        var asked = Slip(total, low, high) ?? "Look at the digits and the bottle once more.";
        return $"The last {recentKpa.Count} of {grade} read {Rounding.Text(low, 1)} to {Rounding.Text(high, 1)} kPa; this one is {Rounding.Text(kpa, 1)} kPa. {asked}";
    }

    private static string? Slip(AbsolutePressure total, decimal low, decimal high)
    {
        var digits = Rounding.Plain(total.Value);
        return Asked("Decimal mark?", [total.Value / 10m, total.Value * 10m]) ?? Asked("Digits swapped?", Swapped(digits));

        string? Asked(string slip, IEnumerable<decimal> meant)
        {
            foreach (var value in meant)
            {
                if (AbsolutePressure.TryFrom(value, total.Unit, out var other) && other.In(PressureUnit.Kilopascal) is var kpa && kpa >= low && kpa <= high)
                    return $"{slip} {Rounding.Plain(value)} {total.Unit.Symbol()} would fit.";
            }

            return null;
        }
    }

    // Two digits side by side, whether or not the decimal mark stands between them.
    private static IEnumerable<decimal> Swapped(string digits)
    {
        var places = Enumerable.Range(0, digits.Length).Where(at => char.IsAsciiDigit(digits[at])).ToList();
        foreach (var (left, right) in places.Zip(places.Skip(1)))
        {
            var characters = digits.ToCharArray();
            (characters[left], characters[right]) = (characters[right], characters[left]);
            yield return decimal.Parse(characters, System.Globalization.CultureInfo.InvariantCulture);
        }
    }
}
