namespace LabVolatility.Core.Assessment;

/// <summary>What r and R say about one result or the mean of several of one laboratory.</summary>
public static class Uncertainty
{
    // R is 1.96·√2 standard deviations: the 95 % range of a difference.
    private static readonly double DeviationsInReproducibility = 1.96 * Math.Sqrt(2.0);

    /// <summary>R of the mean of <paramref name="count"/> results: √(R² − r²(1 − 1/k)).</summary>
    /// <param name="reproducibility">R, above zero.</param>
    /// <param name="repeatability">r in the same unit; needed for more than one result.</param>
    /// <param name="count">k, 1 or more.</param>
    /// <returns>R itself for one result; null where r is not set or larger than R.</returns>
    /// <remarks>Source: ISO 4259-2:2017, mean of several results (from memory).</remarks>
    public static decimal? OfMean(decimal reproducibility, decimal? repeatability, int count)
    {
        if (count == 1)
            return reproducibility;
        if (repeatability is not { } r || r > reproducibility)
            return null;
        var square = (reproducibility * reproducibility) - (r * r * (1m - (1m / count)));
        return (decimal)Math.Sqrt((double)square);
    }

    /// <summary>How far the edge of a guarded verdict lies from the limit: z·R/(1.96·√2·√N).</summary>
    /// <param name="reproducibility">R of what each laboratory found, above zero.</param>
    /// <param name="confidence">Above 0 and below 1; under 0.5 the distance is negative.</param>
    /// <param name="laboratories">N, whose mean is compared; 1 or more.</param>
    /// <remarks>
    /// Source: ISO 4259-2:2017 (0.59 R at 95 % for one laboratory); ASTM D3244-21a (0.255 R·D for two, from memory).
    /// </remarks>
    public static decimal Guard(decimal reproducibility, decimal confidence, int laboratories = 1) =>
        (decimal)(NormalDeviate.Of((double)confidence) * (double)reproducibility
            / (DeviationsInReproducibility * Math.Sqrt(laboratories)));

    /// <summary>The standard uncertainty: R/(1.96·√2).</summary>
    /// <param name="reproducibility">R of what is compared, above zero.</param>
    /// <remarks>Source: ISO 4259-1:2017, R as the 95 % range of a difference.</remarks>
    public static decimal Standard(decimal reproducibility) =>
        (decimal)((double)reproducibility / DeviationsInReproducibility);

    /// <summary>The chance that the true value is beyond a limit, both edges summed.</summary>
    /// <param name="value">The value found, not rounded.</param>
    /// <param name="minimum">In the same unit; null: none.</param>
    /// <param name="maximum">In the same unit; null: none.</param>
    /// <param name="standard">The standard uncertainty, above zero.</param>
    /// <returns>0 to 1.</returns>
    /// <remarks>Source: JCGM 106:2012, clause 7 (from memory).</remarks>
    public static decimal ProbabilityBeyond(decimal value, decimal? minimum, decimal? maximum, decimal standard)
    {
        var above = maximum is { } max ? NormalDeviate.UpperTail((double)(max - value) / (double)standard) : 0.0;
        var below = minimum is { } min ? NormalDeviate.UpperTail((double)(value - min) / (double)standard) : 0.0;
        return (decimal)Math.Min(1.0, above + below);
    }
}
