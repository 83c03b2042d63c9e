using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Methods;

/// <summary>The laboratory's own correlations, for methods whose correlation isn't public.</summary>
public static class OwnCorrelations
{
    private const string TotalSymbol = "Ptot";

    /// <summary>The one in force on a day: approved by another person, not withdrawn, the latest to begin; null: none is set.</summary>
    internal static async Task<Correlation?> OnAsync(LabContext context, TestMethod? method, DateOnly day, CancellationToken cancel)
    {
        if (method is null || !Correlations.AreOwn(method))
            return null;
        var entry = await context.CorrelationEntries.AsNoTracking()
            .Where(e => e.Method == method.Designation && e.ApprovedAt != null && e.WithdrawnAt == null && e.From <= day && (e.Until == null || e.Until >= day))
            .OrderByDescending(e => e.From).ThenByDescending(e => e.Number).FirstOrDefaultAsync(cancel);
        return entry is null ? null : Correlation(entry);
    }

    /// <summary>All that were ever entered for some methods, so that an old result is worked out as it was; none where a method's correlation is public.</summary>
    internal static Task<IReadOnlyList<Correlation>> LoadAsync(LabContext context, IEnumerable<string> methods, CancellationToken cancel) =>
        methods.Distinct().Any(m => TestMethods.TryFind(m, out var method) && Correlations.AreOwn(method))
            ? AllAsync(context, cancel)
            : Task.FromResult<IReadOnlyList<Correlation>>([]);

    internal static async Task<IReadOnlyList<Correlation>> AllAsync(LabContext context, CancellationToken cancel)
    {
        var entries = await context.CorrelationEntries.AsNoTracking().ToListAsync(cancel);
        return [.. entries.Select(Correlation)];
    }

    /// <summary>The one that stored results cite; null where they cite none.</summary>
    internal static Correlation? Used(IReadOnlyList<Correlation> own, IReadOnlyList<Result> results) =>
        own.FirstOrDefault(correlation => results.Any(r => r.CorrelationVersion == correlation.Version));

    public static Correlation Correlation(CorrelationEntry entry)
    {
        if (!TestMethods.TryFind(entry.Method, out var method))
            throw new InvalidOperationException($"Correlation {entry.Number} is for {entry.Method}, which this build does not know.");
        return new Correlation(
            entry.Method, method.DefaultAuthority, entry.Method, "DVPE", $"{method.Citation}, own no. {entry.Number}", TotalSymbol,
            [new PrintedForm(entry.Unit, entry.TotalSlope, -entry.Constant, entry.Source, FactStatus.Laboratory) { GasSlope = entry.GasSlope }]);
    }
}
