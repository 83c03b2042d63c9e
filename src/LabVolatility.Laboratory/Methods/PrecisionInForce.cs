using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Methods;

/// <summary>The precision statements that count now: entered by the laboratory, approved by another person, not withdrawn.</summary>
public static class PrecisionInForce
{
    internal static Task<IReadOnlyList<PrecisionStatement>> LoadAsync(LabContext context, CancellationToken cancel) =>
        context.Read.GetAsync(() => FetchAsync(context, cancel));

    public static PrecisionStatement Statement(PrecisionEntry entry) => new(
        entry.Method, entry.Edition, entry.Quantity, entry.Container, entry.ContainerMillilitres, entry.LowKpa, entry.HighKpa,
        entry.Unit, Form(entry.RepeatabilityConstant, entry.RepeatabilitySlope),
        Form(entry.ReproducibilityConstant, entry.ReproducibilitySlope), entry.Source, FactStatus.Laboratory);

    private static async Task<IReadOnlyList<PrecisionStatement>> FetchAsync(LabContext context, CancellationToken cancel)
    {
        var entries = await context.PrecisionEntries.AsNoTracking()
            .Where(p => p.ApprovedAt != null && p.WithdrawnAt == null)
            .OrderBy(p => p.ApprovedAt).ThenBy(p => p.Id).ToListAsync(cancel);
        return [.. entries.Select(Statement)];
    }

    private static LinearForm? Form(decimal? constant, decimal? slope) =>
        constant is null && slope is null ? null : new LinearForm(constant ?? 0m, slope ?? 0m);
}
