namespace LabVolatility.Core.Assessment;

/// <summary>The standard normal distribution, to the precision of a double.</summary>
/// <remarks>
/// Source: series and continued fraction of the normal integral, Abramowitz and Stegun 26.2.11 and 26.2.14;
/// start of the inverse 26.2.23, then Newton's method.
/// </remarks>
public static class NormalDeviate
{
    private const double SwitchToTail = 3.0;

    /// <summary>The chance of a value above <paramref name="deviate"/>.</summary>
    /// <param name="deviate">Any finite number, in standard deviations.</param>
    /// <returns>0 to 1.</returns>
    public static double UpperTail(double deviate) =>
        deviate < 0 ? 1.0 - UpperTail(-deviate)
        : deviate < SwitchToTail ? 0.5 - FromMiddle(deviate)
        : FromTail(deviate);

    /// <summary>The deviate that a value stays below with a probability.</summary>
    /// <param name="probability">Above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not between 0 and 1.</exception>
    public static double Of(double probability)
    {
        if (probability is not (> 0.0 and < 1.0))
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability is above 0 and below 1.");
        return probability switch
        {
            0.5 => 0.0,
            < 0.5 => -AboveHalf(probability),
            _ => AboveHalf(1.0 - probability),
        };
    }

    private static double AboveHalf(double tail)
    {
        var t = Math.Sqrt(-2.0 * Math.Log(tail));
        var z = t - ((2.515517 + (t * (0.802853 + (t * 0.010328))))
            / (1.0 + (t * (1.432788 + (t * (0.189269 + (t * 0.001308)))))));
        for (var i = 0; i < 6; i++)
            z += (UpperTail(z) - tail) / Density(z);
        return z;
    }

    private static double FromMiddle(double z)
    {
        var (sum, term) = (z, z);
        for (var k = 3; term > sum * 1e-18; k += 2)
        {
            term *= z * z / k;
            sum += term;
        }

        return sum * Density(z);
    }

    private static double FromTail(double z)
    {
        var fraction = z;
        for (var k = 120; k > 0; k--)
            fraction = z + (k / fraction);
        return Density(z) / fraction;
    }

    private static double Density(double z) => Math.Exp(-z * z / 2.0) / Math.Sqrt(2.0 * Math.PI);
}
