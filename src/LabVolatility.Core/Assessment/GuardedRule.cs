using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>Guarded acceptance: the unrounded value against edges moved by its uncertainty.</summary>
internal static class GuardedRule
{
    private const string Source = "ISO 4259-2:2017, ASTM D3244-21a";

    public static LimitOutcome Judge(LimitInput input, decimal value)
    {
        var text = Rounding.Plain(value);
        var margin = Conformity.Margin(input, value);
        if (Unable(input) is { } reason)
        {
            return new(
                Outcome.NotDecided, value, text, margin, Conformity.Beyond(input, value),
                null, null, null, null, null, reason, []);
        }

        var ofMean = Uncertainty.OfMean(input.Reproducibility!.Value, input.Repeatability, input.Count)!.Value;
        var guard = Uncertainty.Guard(ofMean, input.Confidence);
        var outcome = Verdict(margin, guard);
        return new(
            outcome, value, text, margin, Conformity.Beyond(input, value),
            input.Minimum + guard, input.Maximum - guard, input.Minimum - guard, input.Maximum + guard,
            outcome == Outcome.NotDecided ? FurtherResults.ToDecide(input, margin) : 0,
            Why(input, outcome, Rounding.Shown(value)), Steps(input, value, ofMean, guard, margin));
    }

    /// <summary>Conforms on or inside the inner edge, does not conform beyond the outer one.</summary>
    public static Outcome Verdict(decimal margin, decimal guard) =>
        margin >= guard ? Outcome.Conforms
        : margin < -guard ? Outcome.DoesNotConform
        : Outcome.NotDecided;

    private static string? Unable(LimitInput input) => input switch
    {
        { Hazy: true } => "The sample was hazy: the method states no precision for it, so a guarded verdict can't be given.",
        { Reproducibility: null } => "The reproducibility R is not set, so a guarded verdict can't be given. Enter it from the laboratory's own copy of the method.",
        { Count: > 1, Repeatability: null } => "The repeatability r is not set, which the mean of several results needs. Enter it from the laboratory's own copy of the method.",
        { Count: > 1 } when input.Repeatability > input.Reproducibility => "The repeatability r is larger than the reproducibility R; correct the precision.",
        _ => null,
    };

    private static string Why(LimitInput input, Outcome outcome, string text)
    {
        var sure = $"at {Rounding.Plain(input.Confidence * 100m)} % confidence";
        var words = Conformity.Words(input);
        return outcome switch
        {
            Outcome.Conforms => $"{text} is within {words} {sure}.",
            Outcome.DoesNotConform => $"{text} is beyond {words} {sure}.",
            _ => $"{text} is too near to {words} for this measurement to decide {sure}.",
        };
    }

    private static List<ArithmeticStep> Steps(LimitInput input, decimal value, decimal ofMean, decimal guard, decimal margin)
    {
        List<ArithmeticStep> steps = [];
        if (input.Count > 1)
        {
            steps.Add(new(
                "R of the mean",
                $"√({Rounding.Plain(input.Reproducibility!.Value)}² − {Rounding.Plain(input.Repeatability!.Value)}² · (1 − 1/{input.Count}))",
                ofMean, input.Unit, Source));
        }

        var z = (decimal)NormalDeviate.Of((double)input.Confidence);
        steps.Add(new("Guard", $"{Rounding.Text(z, 4)} · {Rounding.Text(ofMean, 4)} / (1.96 · √2)", guard, input.Unit, Source));
        steps.Add(new(
            "Comparison", $"{Rounding.Shown(value)} against {Conformity.Words(input)}, edges moved by {Rounding.Text(guard, 4)}",
            margin, input.Unit, "guarded acceptance"));
        return steps;
    }
}
