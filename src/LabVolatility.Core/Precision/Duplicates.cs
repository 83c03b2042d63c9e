using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Precision;

/// <summary>Whether results of one laboratory on one material agree, and what to do when they don't.</summary>
public static class Duplicates
{
    /// <summary>Judges results in the order they were made.</summary>
    /// <param name="values">Unrounded results in one unit, at least one; each from its own container.</param>
    /// <param name="r">The repeatability in the same unit, above zero; null: not set.</param>
    /// <param name="resultsInAll">How many results are made in all once two disagree, 3 or more.</param>
    /// <exception cref="ArgumentException">There is no result.</exception>
    /// <exception cref="ArgumentOutOfRangeException">r is not above zero, or fewer than 3 results in all.</exception>
    /// <remarks>
    /// Source: ISO 4259-2:2017, results of one laboratory (from memory): two results are accepted when they differ by
    /// at most r; else more are made, ten in all, and the most divergent is held against the mean of the others
    /// with r·√(n/(2(n − 1))). One result may be set aside so; two or more ask for an investigation.
    /// </remarks>
    public static DuplicateVerdict Judge(IReadOnlyList<decimal> values, decimal? r, int resultsInAll = 10)
    {
        if (values.Count == 0)
            throw new ArgumentException("There is no result to judge.", nameof(values));
        if (r <= 0)
            throw new ArgumentOutOfRangeException(nameof(r), r, "A repeatability is above zero, or not set.");
        ArgumentOutOfRangeException.ThrowIfLessThan(resultsInAll, 3);

        int[] all = [.. Enumerable.Range(0, values.Count)];
        if (r is not { } limit)
            return new(null, Mean(values, all), all, NextStep.Report, null, "The repeatability is not set, so agreement can't be judged.");
        if (values.Count == 1)
            return new(true, values[0], all, NextStep.Report, null, "One result: there is nothing to compare it with.");

        var (odd, agrees, why) = Check(values, all, limit);
        if (agrees)
            return new(true, Mean(values, all), all, NextStep.Report, null, why);
        if (values.Count < resultsInAll)
            return new(false, Mean(values, all), all, NextStep.More, resultsInAll - values.Count, $"{why} Make {resultsInAll - values.Count} more, {resultsInAll} in all.");
        return WithoutOne(values, all, odd, limit, why);
    }

    /// <summary>How far the most divergent of <paramref name="count"/> results may be from the mean of the others.</summary>
    /// <param name="r">The repeatability, above zero.</param>
    /// <param name="count">How many results there are, 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two results.</exception>
    /// <remarks>Source: ISO 4259-2:2017 (from memory); r·√(n/(2(n − 1))), which is r for two results.</remarks>
    public static decimal LargestDivergence(decimal r, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 2);
        return r * (decimal)Math.Sqrt(count / (2.0 * (count - 1)));
    }

    private static DuplicateVerdict WithoutOne(IReadOnlyList<decimal> values, int[] all, int odd, decimal r, string why)
    {
        int[] rest = [.. all.Where(i => i != odd)];
        var (_, agrees, second) = Check(values, rest, r);
        return agrees
            ? new(true, Mean(values, rest), rest, NextStep.Report, null, $"{why} Set aside; the others agree.")
            : new(false, Mean(values, all), all, NextStep.Investigate, null, $"{why} {second} More than one would have to be set aside: find the cause before going on.");
    }

    // Compared as squares: no root is taken, so that a difference of exactly the limit is accepted.
    private static (int Odd, bool Agrees, string Why) Check(IReadOnlyList<decimal> values, int[] used, decimal r)
    {
        var n = used.Length;
        var odd = used.MaxBy(i => Divergence(values, used, i));
        var divergence = Divergence(values, used, odd);
        var agrees = divergence * divergence * 2m * (n - 1) <= r * r * n;
        var limit = Rounding.Text(LargestDivergence(r, n), 4);
        var found = n == 2
            ? $"The two results differ by {Rounding.Plain(divergence)}; r is {Rounding.Plain(r)}."
            : $"Result {odd + 1} is {Rounding.Text(divergence, 4)} from the mean of the others; {limit} is allowed for {n} results.";
        return (odd, agrees, found);
    }

    private static decimal Divergence(IReadOnlyList<decimal> values, int[] used, int index) =>
        Math.Abs(values[index] - Mean(values, [.. used.Where(i => i != index)]));

    private static decimal Mean(IReadOnlyList<decimal> values, int[] used) => used.Sum(i => values[i]) / used.Length;
}
