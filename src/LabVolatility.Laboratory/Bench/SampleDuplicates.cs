using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Holds the determinations of one test of one sample against the method's repeatability.</summary>
internal static class SampleDuplicates
{
    /// <summary>The verdict on what counts, in kPa of the first authority's quantity; null when nothing counts yet.</summary>
    public static DuplicateVerdict? Judge(
        AssignedTest test, IReadOnlyList<DeterminationState> determinations, IReadOnlyList<PrecisionStatement> precision, int resultsInAll)
    {
        var counting = determinations.Where(d => d.TestId == test.Id && d.DoesNotCount is null).ToList();
        if (counting.Count == 0 || !TestMethods.TryFind(test.Method, out var method))
            return null;
        var authority = test.Authorities.Count > 0 ? test.Authorities[0] : method.DefaultAuthority;
        if (Correlations.Find(test.Method, authority) is not { } correlation)
            return null;
        var values = counting.Select(d => ValueKpa(method, d, correlation)).ToList();
        return Duplicates.Judge(values, Repeatability(counting, correlation, precision, values), resultsInAll);
    }

    /// <summary>The unrounded quantity in kPa from a determination's total pressure.</summary>
    public static decimal ValueKpa(TestMethod method, DeterminationState state, Correlation correlation) =>
        Measurement.ResultInUnit(
            method, Reading.Pressure(state.Current.Readings.TotalPressure)!.Value, correlation, PressureUnit.Kilopascal)!.Value;

    private static decimal? Repeatability(
        List<DeterminationState> counting, Correlation correlation, IReadOnlyList<PrecisionStatement> precision, List<decimal> values) =>
        PrecisionLookup.FindCautious(counting, correlation.Quantity, values.Average(), PressureUnit.Kilopascal, precision).Repeatability;
}
