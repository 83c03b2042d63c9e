using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>From the readings of one determination to what the method reports.</summary>
public static class Measurement
{
    /// <summary>Results, findings and precision of one determination.</summary>
    /// <param name="method">The test method.</param>
    /// <param name="readings">The raw values; the total pressure is needed.</param>
    /// <param name="sample">The sample as it came to the bench.</param>
    /// <param name="authority">Whose correlation to use.</param>
    /// <param name="reportUnit">The unit to report in.</param>
    /// <param name="precision">The statement in force for this method, edition and container; null: not set.</param>
    /// <exception cref="ArgumentException">The authority has no correlation on this method.</exception>
    /// <remarks>
    /// The equation is used as printed in the reading's unit, so that no converted constant decides; readings in
    /// other units go to kPa first. Results are returned beside blocking findings, which forbid reporting them.
    /// Source: ASTM D5191-22, EN 13016-1:2024, 40 CFR 1090.1355(a), 13 CCR 2297, as each result names.
    /// </remarks>
    public static MethodOutcome Evaluate(
        TestMethod method,
        Readings readings,
        SampleCondition sample,
        Authority authority,
        PressureUnit reportUnit,
        PrecisionStatement? precision = null)
    {
        var correlation = Correlations.Find(method.Designation, authority)
            ?? throw new ArgumentException(
                $"{authority.Text()} has no correlation on {method.Designation}.", nameof(authority));
        if (readings.TotalPressure is not { } total)
            return new MethodOutcome(method, [], [MethodFindings.TotalMissing(method)], null, null);

        var suffix = sample.Hazy ? "H" : "";
        var read = ResultArithmetic.Read(method, total, reportUnit, suffix);
        var correlated = ResultArithmetic.Correlate(correlation, total, correlation.PrintedUnitFor(total.Unit), reportUnit, suffix);
        IReadOnlyList<ReportedResult> results = correlated is null ? [read] : [read, correlated];
        var findings = MethodFindings.All(method, readings, sample, correlation, correlated);
        var (r, bigR) = sample.Hazy ? (null, null) : Precision(method, precision, results);
        return new MethodOutcome(method, results, findings, r, bigR);
    }

    /// <summary>
    /// The correlated pressure in a limit's unit: reading to the limit's unit, correlation in that unit's constants,
    /// not rounded; null where the equation falls below zero.
    /// </summary>
    /// <param name="method">The test method that gave the reading.</param>
    /// <param name="total">The total pressure as read.</param>
    /// <param name="correlation">The correlation that the limit asks for.</param>
    /// <param name="limitUnit">The limit's unit.</param>
    /// <exception cref="ArgumentException">The correlation rests on another method.</exception>
    /// <remarks>Source: the correlation's own; the order of the arithmetic is 40 CFR 1090.50(b) in spirit: round once.</remarks>
    public static ReportedResult? ResultInUnit(
        TestMethod method, AbsolutePressure total, Correlation correlation, PressureUnit limitUnit)
    {
        if (correlation.Method != method.Designation)
            throw new ArgumentException($"{correlation.Name} rests on {correlation.Method}, not on {method.Designation}.", nameof(correlation));
        return ResultArithmetic.Correlate(correlation, total, correlation.PrintedUnitFor(limitUnit), limitUnit, "");
    }

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
