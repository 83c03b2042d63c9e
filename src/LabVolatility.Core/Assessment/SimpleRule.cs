using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Assessment;

/// <summary>Simple acceptance: the value, rounded or as it is, against the limit itself.</summary>
internal static class SimpleRule
{
    public static LimitOutcome Judge(LimitInput input, decimal value)
    {
        var isRounded = input.Comparison == Comparison.Rounding;
        var compared = isRounded ? Rounding.ToPlaces(value, input.Digits) : value;
        var text = isRounded ? Rounding.Text(value, input.Digits) : Rounding.Plain(value);
        var shown = isRounded ? text : Rounding.Shown(value);
        var margin = Conformity.Margin(input, compared);
        var outcome = margin >= 0 ? Outcome.Conforms : Outcome.DoesNotConform;
        var words = Conformity.Words(input);
        List<ArithmeticStep> steps =
        [
            isRounded
                ? new("Rounding", $"{Rounding.Shown(value)} to {Rounding.Words(input.Digits)}, half to even", compared, input.Unit, "ASTM E29-13, rounding method")
                : new("As it is", Rounding.Shown(value), compared, input.Unit, "ASTM E29-13, absolute method"),
            new("Comparison", $"{shown} against {words}", margin, input.Unit, "simple acceptance"),
        ];
        var why = $"{shown} is {(margin >= 0 ? "within" : "beyond")} {words}.";
        return new(
            outcome, value, text, margin, Conformity.Beyond(input, value),
            input.Minimum, input.Maximum, input.Minimum, input.Maximum, 0, why, steps);
    }
}
