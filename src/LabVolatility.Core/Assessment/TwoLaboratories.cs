using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>Whether two laboratories that tested one material by one method found the same.</summary>
public static class TwoLaboratories
{
    private const string Source = "ISO 4259-2:2017, results of two laboratories (from memory)";

    /// <summary>Holds the difference of two means against √(R² − r²(1 − 1/(2·k1) − 1/(2·k2))).</summary>
    /// <param name="first">One laboratory's mean.</param>
    /// <param name="second">The other's, in the same unit.</param>
    /// <param name="reproducibility">R in that unit, above zero; null: not set.</param>
    /// <param name="repeatability">r in that unit, above zero; needed where a mean has more than one result.</param>
    /// <param name="unit">The unit, for the words and the arithmetic.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is below 1, or r or R is not above zero.</exception>
    /// <remarks>
    /// Source: ISO 4259-2:2017, results of two laboratories (from memory). Compared as squares: a difference of
    /// exactly the limit is accepted.
    /// </remarks>
    public static TwoLaboratoryVerdict Judge(
        LaboratoryMean first, LaboratoryMean second, decimal? reproducibility, decimal? repeatability, string unit = "")
    {
        Check(first, second, reproducibility, repeatability);
        var difference = Math.Abs(first.Value - second.Value);
        var found = $"The means differ by {Rounding.Text(difference, 2)} {unit}".TrimEnd();
        if (Unable(first, second, reproducibility, repeatability) is { } reason)
            return new(null, difference, null, $"{found}; whether that is too much can't be judged. {reason}", []);

        var (bigR, r) = (reproducibility!.Value, repeatability ?? 0m);
        var square = SquareOfAllowed(bigR, r, first.Count, second.Count);
        var allowed = (decimal)Math.Sqrt((double)square);
        var agree = difference * difference <= square;
        var words = $"{Rounding.Text(allowed, 2)} {unit}".TrimEnd();
        return new(
            agree, difference, allowed,
            agree ? $"{found}; {words} is allowed." : $"{found}, more than the {words} allowed.",
            Steps(first, second, bigR, r, difference, allowed, unit));
    }

    /// <summary>The largest acceptable difference of two means; null where r is needed and not set, or larger than R.</summary>
    /// <param name="reproducibility">R, above zero.</param>
    /// <param name="repeatability">r in the same unit; null: not set.</param>
    /// <param name="count1">k1, 1 or more.</param>
    /// <param name="count2">k2, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is below 1, or r or R is not above zero.</exception>
    /// <remarks>Source: ISO 4259-2:2017 (from memory); R itself for one result each.</remarks>
    public static decimal? LargestDifference(decimal reproducibility, decimal? repeatability, int count1, int count2)
    {
        var (first, second) = (new LaboratoryMean(0m, count1), new LaboratoryMean(0m, count2));
        Check(first, second, reproducibility, repeatability);
        return Unable(first, second, reproducibility, repeatability) is not null ? null
            : count1 == 1 && count2 == 1 ? reproducibility
            : (decimal)Math.Sqrt((double)SquareOfAllowed(reproducibility, repeatability ?? 0m, count1, count2));
    }

    private static decimal SquareOfAllowed(decimal bigR, decimal r, int count1, int count2) =>
        (bigR * bigR) - (r * r * ((2m * count1 * count2) - count1 - count2) / (2m * count1 * count2));

    private static string? Unable(LaboratoryMean first, LaboratoryMean second, decimal? bigR, decimal? r) =>
        bigR is null ? "The reproducibility R is not set."
        : first.Count == 1 && second.Count == 1 ? null
        : r is null ? "The repeatability r is not set, which a mean of several results needs."
        : r > bigR ? "The repeatability r is larger than the reproducibility R; correct the precision."
        : null;

    private static List<ArithmeticStep> Steps(
        LaboratoryMean first, LaboratoryMean second, decimal bigR, decimal r, decimal difference, decimal allowed, string unit)
    {
        var isSingle = first.Count == 1 && second.Count == 1;
        return
        [
            new("Difference of the means", $"|{Rounding.Shown(first.Value)} − {Rounding.Shown(second.Value)}|", difference, unit, Source),
            isSingle
                ? new("Largest acceptable difference", $"R, one result each: {Rounding.Shown(bigR)}", allowed, unit, Source)
                : new(
                    "Largest acceptable difference",
                    $"√({Rounding.Shown(bigR)}² − {Rounding.Shown(r)}² · (1 − 1/(2·{first.Count}) − 1/(2·{second.Count})))", allowed, unit, Source),
        ];
    }

    private static void Check(LaboratoryMean first, LaboratoryMean second, decimal? bigR, decimal? r)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(first.Count, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(second.Count, 1);
        if (bigR <= 0 || r <= 0)
            throw new ArgumentOutOfRangeException(nameof(bigR), "r and R are above zero, or not set.");
    }
}
