using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>What cargo certificates no longer cover: a release that they rest on was withdrawn, followed by another decision, or marked for review.</summary>
internal static class CargoCover
{
    public static async Task<ILookup<Guid, NotCovered>> LostAsync(LabContext context, IReadOnlyList<Guid> certificates, CancellationToken cancel)
    {
        var lost = await context.CargoTanks.AsNoTracking().Where(t => certificates.Contains(t.CertificateId))
            .Where(t => context.ReviewMarks.Any(m => m.DecisionId == t.DecisionId)
                || context.Decisions.Any(l => l.BatchId == t.BatchId && l.Sequence > context.Decisions.First(d => d.Id == t.DecisionId).Sequence))
            .OrderBy(t => t.Place)
            .Select(t => new
            {
                t.CertificateId,
                t.TankCode,
                t.DecisionId,
                Batch = context.Batches.First(b => b.Id == t.BatchId).Number,
                Last = context.Decisions.Where(d => d.BatchId == t.BatchId).OrderByDescending(d => d.Sequence).Select(d => d.Id).First(),
                Kind = context.Decisions.Where(d => d.BatchId == t.BatchId).OrderByDescending(d => d.Sequence).Select(d => d.Kind).First(),
            }).ToListAsync(cancel);
        return lost.ToLookup(t => t.CertificateId, t => new NotCovered(t.TankCode, t.Batch, Why(t.Last == t.DecisionId, t.Kind)));
    }

    /// <summary>The batches that a cargo certificate rests on, each with its release.</summary>
    public static async Task<IReadOnlyList<(Guid Batch, Guid Decision)>> AllAsync(LabContext context, Guid certificate, CancellationToken cancel)
    {
        var tanks = await context.CargoTanks.AsNoTracking().Where(t => t.CertificateId == certificate).OrderBy(t => t.Place).ToListAsync(cancel);
        return [.. tanks.Select(t => (t.BatchId, t.DecisionId)).Distinct()];
    }

    /// <summary>True where a later revision exists, or it no longer covers all its tanks.</summary>
    public static async Task<bool> IsSupersededAsync(LabContext context, Guid certificate, CancellationToken cancel) =>
        await context.Certificates.AnyAsync(c => c.ReplacesId == certificate, cancel)
        || (await LostAsync(context, [certificate], cancel)).Contains(certificate);

    private static string Why(bool sameDecision, DecisionKind last) =>
        sameDecision ? "is marked for review"
        : last is DecisionKind.Release or DecisionKind.Concession ? "has been released anew"
        : last == DecisionKind.Withdraw ? "has its release withdrawn"
        : $"is {DecisionWords.State(last)}";
}
