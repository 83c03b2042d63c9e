using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Web.Api.Batches;

/// <summary>One limit of one destination and what came of holding the batch against it.</summary>
/// <param name="State">The state that it was picked for.</param>
/// <param name="HandBlend">Number of the hand blend that is held against it; null: the batch's own samples.</param>
public sealed record BatchLimitAnswer(
    string Area, string PointOfCompliance, string? Season, string State, string? HandBlend, bool Required, string Quantity, string? Correlation, Quantity? Minimum, Quantity? Maximum,
    Quantity? Allowance, Quantity? EffectiveMinimum, Quantity? EffectiveMaximum, Quantity? AcceptanceMinimum, Quantity? AcceptanceMaximum,
    Quantity? Value, string? Compared, int Count, Quantity? Margin, decimal? ProbabilityBeyond, int? ResultsToDecide,
    string Outcome, string Standing, string Source, string Status, string Why)
{
    public static BatchLimitAnswer Of(LimitEvidence l) => new(
        l.Area, l.Point.Text(), l.Season, l.State.Text(), l.HandBlend, l.Required, l.Quantity, l.Correlation, In(l, l.Minimum), In(l, l.Maximum),
        In(l, l.Allowance), In(l, l.EffectiveMinimum), In(l, l.EffectiveMaximum), In(l, l.AcceptanceMinimum), In(l, l.AcceptanceMaximum),
        In(l, l.Value), l.Compared, l.Count, In(l, l.Margin), l.ProbabilityBeyond is { } beyond ? Rounding.Trim(beyond) : null, l.ResultsToDecide,
        l.Outcome.Text(), l.Standing.Text(), l.Source, l.Status.Text(), $"{l.Why} {l.OutcomeWhy}");

    private static Quantity? In(LimitEvidence limit, decimal? number) => Api.Quantity.Of(number, limit.Unit);
}
