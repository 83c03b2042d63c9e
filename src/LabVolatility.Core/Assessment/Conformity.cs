using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>Holds a value against a limit by a decision rule agreed beforehand.</summary>
public static class Conformity
{
    /// <summary>The outcome, with margin, probability, edges and arithmetic.</summary>
    /// <param name="input">Value, effective limit, rule and precision, all in the limit's unit.</param>
    /// <exception cref="ArgumentException">The limit has no edge, or its minimum is above its maximum.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Count, confidence, r or R is out of range.</exception>
    /// <remarks>
    /// Simple: ASTM E29-13, rounding or absolute method. Guarded: edges L ∓ z·R/(1.96·√2), compared unrounded.
    /// Source: ISO 4259-2:2017 and ASTM D3244-21a (from memory); JCGM 106:2012 for the probability.
    /// </remarks>
    public static LimitOutcome Judge(LimitInput input)
    {
        Check(input);
        if (input.Value is not { } value)
            return Unanswered();
        return input.Rule == DecisionRule.Guarded ? GuardedRule.Judge(input, value) : SimpleRule.Judge(input, value);
    }

    /// <summary>From a value to the nearest edge of the limit, positive inside.</summary>
    internal static decimal Margin(LimitInput input, decimal compared) => Math.Min(
        input.Maximum - compared ?? decimal.MaxValue,
        compared - input.Minimum ?? decimal.MaxValue);

    /// <summary>The chance of being beyond; null where R, or r for a mean, is not set, or the sample was hazy.</summary>
    internal static decimal? Beyond(LimitInput input, decimal value) =>
        !input.Hazy && input.Reproducibility is { } r
        && Uncertainty.OfMean(r, input.Repeatability, input.Count) is { } ofMean
            ? Uncertainty.ProbabilityBeyond(value, input.Minimum, input.Maximum, Uncertainty.Standard(ofMean))
            : null;

    /// <summary>The limit in words: "45.0 to 60.0 kPa", "at most 9.0 psi".</summary>
    internal static string Words(LimitInput input)
    {
        var low = input.Minimum is { } min ? Rounding.Text(min, input.Digits) : null;
        var high = input.Maximum is { } max ? Rounding.Text(max, input.Digits) : null;
        var words = low is null ? $"at most {high}" : high is null ? $"at least {low}" : $"{low} to {high}";
        return $"{words} {input.Unit}".TrimEnd();
    }

    private static LimitOutcome Unanswered() => new(
        Outcome.Incomplete, null, null, null, null, null, null, null, null, null,
        "There is no result that may answer this limit.", []);

    private static void Check(LimitInput input)
    {
        if (input.Minimum is null && input.Maximum is null)
            throw new ArgumentException("A limit has a minimum or a maximum.", nameof(input));
        if (input.Minimum > input.Maximum)
            throw new ArgumentException("The minimum is above the maximum.", nameof(input));
        ArgumentOutOfRangeException.ThrowIfLessThan(input.Count, 1);
        if (input.Confidence is < 0.5m or >= 1m)
            throw new ArgumentOutOfRangeException(nameof(input), input.Confidence, "A confidence is at least 0.5 and below 1.");
        if (input.Repeatability <= 0 || input.Reproducibility <= 0)
            throw new ArgumentOutOfRangeException(nameof(input), "r and R are above zero, or not set.");
    }
}
