using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>Each limit with the batch held against it, why it was picked, and how the value came about.</summary>
public sealed partial class LimitTable : ComponentBase
{
    [Parameter, EditorRequired]
    public Evidence Evidence { get; set; } = null!;

    /// <summary>"max 62.0 + 6.9 = 68.9 kPa": base, allowance, effective.</summary>
    private static string Effective(LimitEvidence limit)
    {
        string?[] edges =
        [
            limit.EffectiveMinimum is { } min ? $"min {Rounding.Text(min, limit.Digits)}" : null,
            limit.EffectiveMaximum is { } max
                ? limit is { Maximum: { } basis, Allowance: { } allowance }
                    ? $"max {Rounding.Text(basis, limit.Digits)} + {Rounding.Plain(allowance)} = {Rounding.Text(max, limit.Digits)}"
                    : $"max {Rounding.Text(max, limit.Digits)}"
                : null,
        ];
        return $"{string.Join(", ", edges.OfType<string>())} {limit.Unit}";
    }

    private static string Results(LimitEvidence limit) =>
        limit.Outcome == Outcome.NotDecided
            ? limit.ResultsToDecide is { } needed ? $"{limit.Count}, {needed} decide" : $"{limit.Count}, none can decide"
            : $"{limit.Count}";
}
