using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>One limit and what came of holding results against it.</summary>
public sealed record LimitAnswer(
    string? Quantity, Quantity? Minimum, Quantity? Maximum, Quantity? Allowance, Quantity? EffectiveMinimum, Quantity? EffectiveMaximum,
    Quantity? AcceptanceMinimum, Quantity? AcceptanceMaximum, Quantity? Value, string? Compared, Quantity? Margin,
    decimal? ProbabilityBeyond, int? ResultsToDecide, string Outcome, string? Standing, string? Source, string? Status, string Why)
{
    /// <summary>A limit of the catalogue.</summary>
    public static LimitAnswer Of(AssessedLimit assessed)
    {
        var (picked, outcome) = (assessed.Picked, assessed.Outcome);
        var limit = picked.Limit;
        return Of(outcome, limit.Unit) with
        {
            Quantity = limit.Quantity,
            Minimum = Api.Quantity.Of(limit.Minimum, limit.Unit),
            Maximum = Api.Quantity.Of(limit.Maximum, limit.Unit),
            Allowance = Api.Quantity.Of(picked.AllowanceGiven, limit.Unit),
            EffectiveMinimum = Api.Quantity.Of(picked.EffectiveMinimum, limit.Unit),
            EffectiveMaximum = Api.Quantity.Of(picked.EffectiveMaximum, limit.Unit),
            Standing = limit.Standing.Text(),
            Source = limit.Source,
            Status = limit.Status.Text(),
            Why = $"{picked.Why} {outcome.Why}",
        };
    }

    /// <summary>A bare limit, which is its own effective one.</summary>
    public static LimitAnswer Of(LimitInput input, LimitOutcome outcome) => Of(outcome, input.Unit) with
    {
        Minimum = Api.Quantity.Of(input.Minimum, input.Unit),
        Maximum = Api.Quantity.Of(input.Maximum, input.Unit),
        EffectiveMinimum = Api.Quantity.Of(input.Minimum, input.Unit),
        EffectiveMaximum = Api.Quantity.Of(input.Maximum, input.Unit),
    };

    private static LimitAnswer Of(LimitOutcome outcome, string unit) => new(
        null, null, null, null, null, null,
        Api.Quantity.Of(outcome.AcceptanceMinimum, unit), Api.Quantity.Of(outcome.AcceptanceMaximum, unit),
        Api.Quantity.Of(outcome.Value, unit), outcome.Compared, Api.Quantity.Of(outcome.Margin, unit),
        outcome.ProbabilityBeyond is { } beyond ? Rounding.Trim(beyond) : null, outcome.ResultsToDecide, outcome.Outcome.Text(), null, null, null, outcome.Why);
}
