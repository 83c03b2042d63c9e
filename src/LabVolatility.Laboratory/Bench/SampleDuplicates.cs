using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Holds the determinations of one test of one sample against the method's repeatability.</summary>
internal static class SampleDuplicates
{
    /// <summary>The verdict on what counts, in kPa of the first authority's quantity, else of the vapour pressure; null when nothing counts yet.</summary>
    public static DuplicateVerdict? Judge(
        AssignedTest test, IReadOnlyList<DeterminationState> determinations, IReadOnlyList<PrecisionStatement> precision, int resultsInAll)
    {
        var counting = determinations.Where(d => d.TestId == test.Id && d.DoesNotCount is null).ToList();
        if (counting.Count == 0 || !TestMethods.TryFind(test.Method, out var method))
            return null;
        var authority = test.Authorities.Count > 0 ? test.Authorities[0] : method.DefaultAuthority;
        var (quantity, values) = Values(method, Correlations.Find(test.Method, authority) ?? counting[0].OwnCorrelation, counting);
        var fit = PrecisionLookup.FindCautious(counting, quantity, values.Average(), PressureUnit.Kilopascal, precision);
        return Duplicates.Judge(values, fit.Repeatability, resultsInAll);
    }

    // Unrounded, from the readings; the vapour pressure free of gas where one of them has no correlated result.
    private static (string Quantity, List<decimal> Values) Values(
        TestMethod method, Correlation? correlation, List<DeterminationState> counting) =>
        correlation is not null && counting.TrueForAll(d => d.ResultFor(correlation.Quantity, correlation.Name) is not null)
            ? (correlation.Quantity, [.. counting.Select(d => Measurement.ResultInUnit(
                method, d.Quantities, Volume.From(d.ContainerMillilitres, VolumeUnit.Millilitre), correlation, PressureUnit.Kilopascal)!.Value)])
            : (Correlation.VaporPressure, [.. counting.Select(d => Measurement.VaporPressureInUnit(method, d.Quantities, PressureUnit.Kilopascal)!.Value)]);
}
