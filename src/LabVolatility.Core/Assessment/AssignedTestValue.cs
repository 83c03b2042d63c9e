using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>The assigned test value of two parties, held against the acceptance limit they agreed on.</summary>
public static class AssignedTestValue
{
    private const int Laboratories = 2;
    private const string Source = "ASTM D3244-21a (from memory)";

    /// <summary>The ATV is the mean where the two differ by at most R; AL = S ± 0.255·R·D at the agreed probability.</summary>
    /// <param name="input">Values, limit, R and what was agreed, all in the limit's unit.</param>
    /// <exception cref="ArgumentException">The limit has no edge.</exception>
    /// <exception cref="ArgumentOutOfRangeException">R is not above zero, or P is not between 0 and 1.</exception>
    /// <remarks>
    /// Source: ASTM D3244-21a; the factor 0.255 = 1/(1.96·2) and the rounding of both to the limit's decimals under
    /// the rounding comparison from memory.
    /// </remarks>
    public static AssignedTestVerdict Judge(AssignedTestInput input)
    {
        Check(input);
        if (input.Reproducibility is not { } bigR)
            return new(null, null, null, null, "The reproducibility R is not set, so there is no assigned test value.", []);
        var guard = Uncertainty.Guard(bigR, input.Probability, Laboratories);
        var (low, high) = (Edge(input, input.Minimum - guard), Edge(input, input.Maximum + guard));
        List<ArithmeticStep> steps = [Limit(input, bigR, guard, low, high)];
        var difference = Math.Abs(input.First - input.Second);
        if (difference > bigR)
        {
            return new(null, low, high, null,
                $"The two differ by {Words(difference, 2, input.Unit)}, more than R = {Words(bigR, 2, input.Unit)}: there is no assigned test value.", steps);
        }

        var value = (input.First + input.Second) / Laboratories;
        steps.Insert(0, new("Assigned test value", $"({Rounding.Shown(input.First)} + {Rounding.Shown(input.Second)}) / 2", value, input.Unit, Source));
        var compared = input.Comparison == Comparison.Rounding ? Rounding.ToPlaces(value, input.Digits) : value;
        var accepted = !(compared < low) && !(compared > high);
        var text = input.Comparison == Comparison.Rounding ? Rounding.Text(value, input.Digits) : Rounding.Shown(value);
        var edges = string.Join(" and ", new[] { Side("at least", low), Side("at most", high) }.OfType<string>());
        return new(value, low, high, accepted,
            $"The assigned test value {text} is {(accepted ? "on the good side of" : "beyond")} the acceptance limit, {edges} {input.Unit}".TrimEnd() + ".", steps);

        string? Side(string word, decimal? edge) =>
            edge is { } at ? $"{word} {(input.Comparison == Comparison.Rounding ? Rounding.Text(at, input.Digits) : Rounding.Text(at, 3))}" : null;
    }

    // Under the rounding comparison both sides carry the limit's decimals; else neither is rounded.
    private static decimal? Edge(AssignedTestInput input, decimal? edge) =>
        edge is { } at && input.Comparison == Comparison.Rounding ? Rounding.ToPlaces(at, input.Digits) : edge;

    private static ArithmeticStep Limit(AssignedTestInput input, decimal bigR, decimal guard, decimal? low, decimal? high)
    {
        var deviate = Rounding.Text((decimal)NormalDeviate.Of((double)input.Probability), 3);
        var sums = new[]
        {
            input.Minimum is { } min ? $"{Rounding.Plain(min)} − 0.255 · {Rounding.Shown(bigR)} · {deviate}" : null,
            input.Maximum is { } max ? $"{Rounding.Plain(max)} + 0.255 · {Rounding.Shown(bigR)} · {deviate}" : null,
        }.OfType<string>();
        var rounded = input.Comparison == Comparison.Rounding ? $", to {Rounding.Words(input.Digits)}" : "";
        return new(
            $"Acceptance limit at P = {Rounding.Plain(input.Probability)}", string.Join("; ", sums) + rounded,
            high is null || low is null ? low ?? high : guard, input.Unit, Source);
    }

    private static string Words(decimal value, int places, string unit) => $"{Rounding.Text(value, places)} {unit}".TrimEnd();

    private static void Check(AssignedTestInput input)
    {
        if (input.Minimum is null && input.Maximum is null)
            throw new ArgumentException("A limit has a minimum or a maximum.", nameof(input));
        if (input.Probability is <= 0m or >= 1m)
            throw new ArgumentOutOfRangeException(nameof(input), input.Probability, "A probability is above 0 and below 1.");
        if (input.Reproducibility <= 0)
            throw new ArgumentOutOfRangeException(nameof(input), "R is above zero, or not set.");
    }
}
