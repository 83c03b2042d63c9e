using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Limits;

/// <summary>A limit's maximum with its ethanol allowance.</summary>
public static class EffectiveLimit
{
    /// <summary>Base plus allowance, rounded once, half to even, to the limit's decimals.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="state">A blendstock gets no allowance.</param>
    /// <param name="ethanolPercent">Measured, % (V/V); null: not measured, so no allowance.</param>
    /// <param name="derogation">Whether the area has been granted one.</param>
    /// <remarks>Source: 40 CFR 1090.215(b); Directive 98/70/EC, annex III; each limit names its own.</remarks>
    public static EffectiveMaximum Maximum(Limit limit, ProductState state, decimal? ethanolPercent, bool derogation)
    {
        var (amount, why) = Granted(limit, state, ethanolPercent, derogation);
        return amount is { } given && limit.Maximum is { } maximum
            ? new(Rounding.ToPlaces(maximum + given, limit.Digits), given, why)
            : new(limit.Maximum, null, why);
    }

    private static (decimal? Amount, string Why) Granted(
        Limit limit, ProductState state, decimal? ethanolPercent, bool derogation)
    {
        if (limit.Allowance is NoAllowance || limit.Maximum is null)
            return (null, "");
        if (state == ProductState.Blendstock)
            return (null, "No ethanol allowance: a blendstock is judged on its own.");
        if (limit.Allowance.RequiresDerogation && !derogation)
            return (null, "No ethanol allowance: the area has no derogation in force.");
        if (ethanolPercent is not { } ethanol)
            return (null, "No ethanol allowance: the ethanol content wasn't measured.");
        var amount = limit.Allowance switch
        {
            FixedAllowance window => ethanol >= window.EthanolLow && ethanol <= window.EthanolHigh ? window.Amount : null,
            TableAllowance table => table.At(ethanol),
            _ => (decimal?)null,
        };
        var content = $"{Rounding.Shown(ethanol)} % (V/V) ethanol";
        return amount is { } given
            ? (given, $"Allowance of {Rounding.Shown(given)} {limit.Unit} for {content} ({limit.Allowance.Source}).")
            : (null, $"No ethanol allowance: {content} is outside {Window(limit.Allowance)} % (V/V) ({limit.Allowance.Source}).");
    }

    private static string Window(Allowance allowance) => allowance switch
    {
        FixedAllowance window => $"{Rounding.Plain(window.EthanolLow)} to {Rounding.Plain(window.EthanolHigh)}",
        TableAllowance table => $"{Rounding.Plain(table.Points[0].EthanolPercent)} to {Rounding.Plain(table.Points[^1].EthanolPercent)}",
        _ => "",
    };
}
