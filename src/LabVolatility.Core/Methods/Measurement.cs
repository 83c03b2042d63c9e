using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>From the readings of one determination to what the method reports.</summary>
public static class Measurement
{
    /// <summary>Results, findings and precision of one determination.</summary>
    /// <param name="method">The test method.</param>
    /// <param name="readings">The raw values; the total pressure is needed, and the gas part where the method takes it off.</param>
    /// <param name="sample">The sample as it came to the bench.</param>
    /// <param name="authority">Whose correlation to use.</param>
    /// <param name="reportUnit">The unit to report in.</param>
    /// <param name="precision">The statement in force for this method, edition and container; null: not set.</param>
    /// <param name="own">The laboratory's own correlation, for a method whose correlation isn't public; null: not set.</param>
    /// <exception cref="ArgumentException">The authority has no correlation on this method.</exception>
    /// <remarks>
    /// The equation is used as printed in the reading's unit, so that no converted constant decides; readings in
    /// other units go to kPa first. Results are returned beside blocking findings, which forbid reporting them.
    /// Source: ASTM D5191-22, EN 13016-1:2024, ASTM D6378-22, 40 CFR 1090.1355(a), 13 CCR 2297, as each result names.
    /// </remarks>
    public static MethodOutcome Evaluate(
        TestMethod method,
        Readings readings,
        SampleCondition sample,
        Authority authority,
        PressureUnit reportUnit,
        PrecisionStatement? precision = null,
        Correlation? own = null)
    {
        if (!method.Authorities.Contains(authority))
            throw new ArgumentException($"{authority.Text()} has no correlation on {method.Designation}.", nameof(authority));
        if (readings.TotalPressure is not { } total)
            return new MethodOutcome(method, [], [MethodFindings.TotalMissing(method)], null, null);

        var correlation = Correlations.Find(method.Designation, authority) ?? own;
        var form = method.TakesGasOff && !IsFuel(sample.Kind) ? null : correlation?.FormFor(total.Unit, sample.ContainerVolume);
        var suffix = sample.Hazy ? "H" : "";
        List<ReportedResult> results = [ResultArithmetic.Read(method, total, reportUnit, suffix)];
        if (method.TakesGasOff)
            results.AddRange(ResultArithmetic.FreeOfGas(method, readings, method.WorkUnit(total.Unit), reportUnit, suffix));
        var correlated = form is null ? null : ResultArithmetic.Correlate(method, correlation!, form, readings, reportUnit, suffix);
        if (correlated is not null)
            results.Add(correlated);
        IReadOnlyList<Finding> findings =
        [
            .. form is null || correlated is not null ? [] : MethodFindings.BelowZero(correlation!, form, method, readings),
            .. MethodFindings.All(method, readings, sample, form is not null && correlated is null ? null : Scoped(method, readings, sample.Kind, correlated)),
            .. GasFindings.NoCorrelation(method, sample, correlation, form),
        ];
        var none = sample.Hazy || findings.Any(f => f.Code == FindingCodes.OutsideScope) || IsOtherSize(method, sample, precision);
        var (r, bigR) = none ? (null, null) : Precision(method, precision, results);
        return new MethodOutcome(method, results, findings, r, bigR);
    }

    /// <summary>
    /// The correlated pressure in a limit's unit: reading to the limit's unit, correlation in that unit's constants,
    /// not rounded; null where the equation falls below zero, or isn't printed for the container.
    /// </summary>
    /// <param name="method">The test method that gave the reading.</param>
    /// <param name="readings">The pressures as read.</param>
    /// <param name="container">The container's size; null: not known.</param>
    /// <param name="correlation">The correlation that the limit asks for.</param>
    /// <param name="limitUnit">The limit's unit.</param>
    /// <exception cref="ArgumentException">The correlation rests on another method.</exception>
    /// <remarks>Source: the correlation's own; the order of the arithmetic is 40 CFR 1090.50(b) in spirit: round once.</remarks>
    public static ReportedResult? ResultInUnit(
        TestMethod method, Readings readings, Volume? container, Correlation correlation, PressureUnit limitUnit)
    {
        if (correlation.Method != method.Designation)
            throw new ArgumentException($"{correlation.Name} rests on {correlation.Method}, not on {method.Designation}.", nameof(correlation));
        return correlation.FormFor(limitUnit, container) is { } form
            ? ResultArithmetic.Correlate(method, correlation, form, readings, limitUnit, "")
            : null;
    }

    /// <summary>The vapour pressure free of gas in a unit, not rounded; null where the method doesn't give it or a reading is missing.</summary>
    /// <param name="method">The test method that gave the readings.</param>
    /// <param name="readings">The pressures as read.</param>
    /// <param name="unit">The unit to work in.</param>
    /// <remarks>Source: the method's own.</remarks>
    public static ReportedResult? VaporPressureInUnit(TestMethod method, Readings readings, PressureUnit unit) => method.TakesGasOff
        ? ResultArithmetic.FreeOfGas(method, readings, unit, unit, "").FirstOrDefault(r => r.Quantity == Correlation.VaporPressure)
        : null;

    /// <summary>Whether the DVPE speaks of a sample: gasoline and its blends with ethanol.</summary>
    internal static bool IsFuel(SampleKind kind) => kind is SampleKind.Gasoline or SampleKind.EthanolBlend;

    // What the method's scope speaks of, in the unit of the reading; null where it isn't known.
    private static AbsolutePressure? Scoped(TestMethod method, Readings readings, SampleKind kind, ReportedResult? correlated)
    {
        var quantity = method.ScopeOf(kind).Quantity;
        if (quantity == method.TotalSymbol)
            return readings.TotalPressure;
        var result = quantity == Correlation.VaporPressure
            ? VaporPressureInUnit(method, readings, method.WorkUnit(readings.TotalPressure!.Value.Unit))
            : correlated;
        return result is not null && AbsolutePressure.TryFrom(result.Value, result.Unit, out var pressure) ? pressure : null;
    }

    // What is stated for containers in general speaks of the sizes that the method names.
    private static bool IsOtherSize(TestMethod method, SampleCondition sample, PrecisionStatement? statement) =>
        statement?.ContainerMillilitres is null && method.PrecisionContainerVolumes.Count > 0 && sample.ContainerVolume is { } volume
        && method.PrecisionContainerVolumes.All(v => v.In(VolumeUnit.Millilitre) != volume.In(VolumeUnit.Millilitre));

    private static (decimal? Repeatability, decimal? Reproducibility) Precision(
        TestMethod method, PrecisionStatement? statement, IReadOnlyList<ReportedResult> results)
    {
        var result = results.FirstOrDefault(candidate => candidate.Quantity == statement?.Quantity);
        if (statement is null || result is null || statement.Method != method.Designation)
            return (null, null);
        if (!AbsolutePressure.TryFrom(result.Value, result.Unit, out var level) || !statement.Covers(level))
            return (null, null);
        return (statement.RepeatabilityAt(level, result.Unit), statement.ReproducibilityAt(level, result.Unit));
    }
}
