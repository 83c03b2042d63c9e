using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Limits as picked, with their effective edges and the reason for each; the maximum opens into its arithmetic.</summary>
public sealed partial class PickedTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<PickedLimit> Picked { get; set; } = [];

    private int Places => Picked.Max(p => p.Limit.Digits);

    /// <summary>Base, allowance, effective maximum.</summary>
    internal static IReadOnlyList<ArithmeticStep> Steps(PickedLimit picked)
    {
        var (limit, steps) = (picked.Limit, new List<ArithmeticStep>());
        steps.Add(new("Maximum as laid down", limit.Key, limit.Maximum, limit.Unit, limit.Source));
        if (picked.AllowanceGiven is { } given)
        {
            steps.Add(new("Allowance", LimitWords.Allowance(limit), given, limit.Unit, limit.Allowance.Source));
            steps.Add(new(
                "Effective maximum",
                $"{Rounding.Plain(limit.Maximum!.Value)} + {Rounding.Shown(given)}, rounded once, half to even, {LimitWords.Decimals(limit.Digits)}",
                picked.EffectiveMaximum, limit.Unit, limit.Allowance.Source));
        }
        else if (limit.Allowance is not NoAllowance)
        {
            steps.Add(new("Allowance", "none given: see why it was picked", null, "", limit.Allowance.Source));
        }

        return steps;
    }

    private static string? Shown(decimal? edge, Limit limit) => edge is { } value ? Rounding.Text(value, limit.Digits) : null;
}
