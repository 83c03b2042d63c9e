using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>What was amended after it had been reported, old and new, for the certificate.</summary>
internal static class AmendmentLines
{
    public static async Task<IReadOnlyList<AmendmentLine>> LoadAsync(LabContext context, Evidence evidence, CancellationToken cancel)
    {
        var amended = evidence.Samples.SelectMany(s => s.Determinations, (s, d) => (Sample: s.Number, Determination: d))
            .Where(x => x.Determination.Revision > 1).ToList();
        if (amended.Count == 0)
            return [];
        var ids = amended.Select(a => a.Determination.Id).ToList();
        var revisions = await context.DeterminationRevisions.AsNoTracking()
            .Where(r => ids.Contains(r.DeterminationId)).OrderBy(r => r.Revision).ToListAsync(cancel);
        return
        [
            .. amended.SelectMany(a => Pairs(revisions.Where(r => r.DeterminationId == a.Determination.Id && r.Revision <= a.Determination.Revision))
                .Select(p => new AmendmentLine(
                    $"Sample {a.Sample}, container {a.Determination.Container}", Text(p.Old), Text(p.New), p.New.Reason ?? "", p.New.ByName, p.New.At))),
        ];
    }

    private static IEnumerable<(DeterminationRevision Old, DeterminationRevision New)> Pairs(IEnumerable<DeterminationRevision> revisions)
    {
        var ordered = revisions.ToList();
        return ordered.Zip(ordered.Skip(1));
    }

    private static string Text(DeterminationRevision revision) =>
        $"total pressure {revision.Readings.TotalPressure?.Typed ?? "none"}" + Gas(revision.Readings) + (revision.SetAside ? $", set aside: {revision.AssignableCause}" : "");

    private static string Gas(ReadingsAsTyped readings) =>
        readings.GasPressure is { } gas ? $", gas pressure {gas.Typed}"
        : readings.Expansions.Count > 0 ? $", expansions {string.Join("; ", readings.Expansions.Select(e => $"{e.Pressure.Typed} at {e.Volume.Typed}"))}"
        : "";
}
