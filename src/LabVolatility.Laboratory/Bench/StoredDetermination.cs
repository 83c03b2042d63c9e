using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>A stored determination's first answer, told again.</summary>
public static class StoredDetermination
{
    internal static async Task<ReportedDetermination> ReadAsync(LabContext context, Guid id, CancellationToken cancel)
    {
        var stored = await context.Determinations.AsNoTracking().Include(d => d.Revisions).Include(d => d.Results)
            .FirstAsync(d => d.Id == id, cancel);
        if (!TestMethods.TryFind(stored.Method, out var method))
            throw new InvalidOperationException($"Determination {id} was made by {stored.Method}, which this build does not know.");
        var first = stored.Revisions.OrderBy(r => r.Revision).First();
        var results = stored.Results.Where(r => r.Revision == first.Revision)
            .OrderBy(r => method.Quantities.ToList().IndexOf(r.Quantity)).ThenBy(r => r.Correlation, StringComparer.Ordinal)
            .Select(Report).ToList();
        var sample = await context.Samples.Where(s => s.Id == stored.SampleId).Select(s => s.Number).FirstAsync(cancel);
        return new ReportedDetermination(id, sample, new EvaluatedDetermination(method, results, first.Findings), null);
    }

    public static ReportedResult Report(Result r) => new(
        r.Quantity, decimal.Parse(r.Exact, System.Globalization.CultureInfo.InvariantCulture), r.Reported, UnitOf(r.Unit), r.Suffix,
        r.Correlation, r.Equation, r.Source, r.Status, r.Arithmetic) { CorrelationVersion = r.CorrelationVersion };

    internal static Result Store(ReportedResult r, Guid determination, int revision) => new()
    {
        Id = Guid.NewGuid(),
        DeterminationId = determination,
        Revision = revision,
        Quantity = r.Quantity,
        Correlation = r.Correlation,
        CorrelationVersion = r.CorrelationVersion,
        Value = Rounding.ToPlaces(r.Value, 6),
        Exact = r.Value.ToString(System.Globalization.CultureInfo.InvariantCulture),
        Reported = r.Reported,
        Unit = r.Unit.Symbol(),
        Suffix = r.Suffix,
        Equation = r.Equation,
        Source = r.Source,
        Status = r.Status,
        Arithmetic = r.Arithmetic,
    };

    private static PressureUnit UnitOf(string symbol) =>
        PressureUnits.TryParse(symbol, out var unit)
            ? unit
            : throw new InvalidOperationException($"A stored result has the unit \"{symbol}\".");
}
