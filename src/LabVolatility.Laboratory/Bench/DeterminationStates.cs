using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Loads determinations as they stand now.</summary>
internal static class DeterminationStates
{
    public static async Task<IReadOnlyList<DeterminationState>> LoadAsync(
        LabContext context, IReadOnlyList<Guid> sampleIds, CancellationToken cancel)
    {
        if (sampleIds.Count == 0)
            return [];
        var rows = await context.Determinations.AsNoTracking()
            .Where(d => sampleIds.Contains(d.SampleId))
            .Include(d => d.Revisions).Include(d => d.Results).Include(d => d.TakenOn)
            .AsSingleQuery().ToListAsync(cancel);
        var containers = await context.Containers.AsNoTracking()
            .Where(c => sampleIds.Contains(c.SampleId))
            .Select(c => new { c.Id, c.Number, c.Kind, c.VolumeMillilitres }).ToDictionaryAsync(c => c.Id, cancel);
        var measurers = rows.Select(Measurer).OfType<Guid>().Distinct().ToList();
        var names = await context.People.AsNoTracking().Where(p => measurers.Contains(p.Id))
            .Select(p => new { p.Id, p.FullName, p.UserName }).ToDictionaryAsync(p => p.Id, p => (p.FullName, p.UserName), cancel);
        var own = await OwnCorrelations.LoadAsync(context, rows.Select(r => r.Method), cancel);

        // By container before by id: two bottles of one moment keep their order in whatever database they lie.
        return [.. rows.OrderBy(d => d.MeasuredAt).ThenBy(d => d.RecordedAt)
            .ThenBy(d => containers[d.ContainerId].Number).ThenBy(d => d.Id).Select(d => State(d, names))];

        DeterminationState State(Determination d, Dictionary<Guid, (string FullName, string? UserName)> people)
        {
            var revisions = d.Revisions.OrderBy(r => r.Revision).ToList();
            var container = containers[d.ContainerId];
            var results = d.Results.Where(r => r.Revision == revisions[^1].Revision).ToList();
            return new DeterminationState
            {
                Id = d.Id,
                SampleId = d.SampleId,
                ContainerId = d.ContainerId,
                TestId = d.TestId,
                ContainerNumber = container.Number,
                ContainerKind = container.Kind,
                ContainerMillilitres = container.VolumeMillilitres,
                Method = d.Method,
                Edition = d.Edition,
                Instrument = d.InstrumentCode,
                MeasuredAt = d.MeasuredAt,
                MeasurerId = Measurer(d),
                Measurer = Measurer(d) is { } id ? people.GetValueOrDefault(id).FullName : null,
                MeasurerAccount = Measurer(d) is { } account ? people.GetValueOrDefault(account).UserName : null,
                RecordedAt = d.RecordedAt,
                Revisions = revisions,
                OwnCorrelation = OwnCorrelations.Used(own, results),
                Results = [.. results.OrderBy(r => r.Quantity, StringComparer.Ordinal).ThenBy(r => r.Correlation, StringComparer.Ordinal)],
            };
        }
    }

    private static Guid? Measurer(Determination d) => d.MeasuredBy ?? d.TakenOn?.PersonId;
}
