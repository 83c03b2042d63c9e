using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>From readings to results: the one function that bench, interface and replay call.</summary>
public static class DeterminationEvaluation
{
    /// <summary>Results under every authority of the input; the total pressure once.</summary>
    /// <exception cref="InvalidOperationException">The method isn't known.</exception>
    /// <exception cref="ArgumentException">An authority has no correlation on it.</exception>
    public static EvaluatedDetermination Evaluate(DeterminationInput input)
    {
        if (!TestMethods.TryFind(input.Method, out var method))
            throw new InvalidOperationException($"\"{input.Method}\" is not a test method of this laboratory.");
        var results = new List<ReportedResult>();
        var findings = new List<Finding>();
        foreach (var authority in input.Authorities.Count > 0 ? input.Authorities : [method.DefaultAuthority])
        {
            var outcome = Measurement.Evaluate(
                method, input.Quantities, input.Condition, authority, ReportUnit(input, method, authority), null, input.Own);
            results.AddRange(outcome.Results.Where(r => !results.Any(known => SameQuantity(known, r))));
            findings.AddRange(outcome.Findings.Where(f => !findings.Contains(f)));
        }

        return new EvaluatedDetermination(method, results, findings);
    }

    // psi is reported only by an equation that its source prints in psi; every other reading is reported in kPa.
    private static PressureUnit ReportUnit(DeterminationInput input, TestMethod method, Authority authority)
    {
        var read = Reading.Pressure(input.Readings.TotalPressure)?.Unit ?? PressureUnit.Kilopascal;
        return (Correlations.Find(method.Designation, authority) ?? input.Own)?.PrintedUnitFor(read) ?? method.WorkUnit(read);
    }

    private static bool SameQuantity(ReportedResult one, ReportedResult other) =>
        one.Quantity == other.Quantity && one.Correlation == other.Correlation && one.Unit == other.Unit;
}
