using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>Recomputes every stored result from its stored readings under its recorded edition and correlation: equal, for ever.</summary>
public sealed class Replay(Func<LabContext> open)
{
    private const int Chunk = 500;

    /// <param name="Results">Results recomputed.</param>
    /// <param name="Differences">Which differ, and how.</param>
    public sealed record Report(long Results, IReadOnlyList<string> Differences)
    {
        public bool AllEqual => Differences.Count == 0;
    }

    public async Task<Report> Run(CancellationToken cancel = default)
    {
        var differences = new List<string>();
        long count = 0;
        await using var context = open();
        var own = await OwnCorrelations.AllAsync(context, cancel);
        var all = await context.Determinations.AsNoTracking().OrderBy(d => d.RecordedAt).Select(d => d.Id).ToListAsync(cancel);
        foreach (var ids in all.Chunk(Chunk))
        {
            var chunk = await context.Determinations.AsNoTracking().Where(d => ids.Contains(d.Id))
                .Include(d => d.Revisions).Include(d => d.Results).AsSplitQuery().ToListAsync(cancel);
            var sampleIds = chunk.Select(d => d.SampleId).Distinct().ToList();
            var kinds = await context.Samples.Where(s => sampleIds.Contains(s.Id))
                .Join(context.Grades, s => s.GradeCode, g => g.Code, (s, g) => new { s.Id, g.Kind }).ToDictionaryAsync(x => x.Id, x => x.Kind, cancel);
            var containerIds = chunk.Select(d => d.ContainerId).ToList();
            var containers = await context.Containers.AsNoTracking().Where(c => containerIds.Contains(c.Id)).ToDictionaryAsync(c => c.Id, cancel);
            foreach (var determination in chunk)
                count += Compare(determination, kinds[determination.SampleId], containers[determination.ContainerId], own, differences);
        }

        return new Report(count, differences);
    }

    private static int Compare(
        Determination d, SampleKind kind, Samples.Container container, IReadOnlyList<Correlation> own, List<string> differences)
    {
        foreach (var revision in d.Revisions)
        {
            var stored = d.Results.Where(r => r.Revision == revision.Revision).ToList();
            var authorities = stored.Select(r => Correlations.Named(r.Correlation)?.Authority).OfType<Authority>().Distinct().ToList();
            var again = DeterminationEvaluation.Evaluate(new DeterminationInput(
                d.Method, authorities, kind, container.Kind, container.VolumeMillilitres, revision.Readings, revision.Handling,
                OwnCorrelations.Used(own, stored)))
                .Results.Select(r => StoredDetermination.Store(r, d.Id, revision.Revision)).ToList();
            foreach (var result in stored)
            {
                var name = $"determination {d.Id} revision {revision.Revision} {result.Quantity} ({result.Correlation})";
                var match = again.FirstOrDefault(r => r.Quantity == result.Quantity && r.Correlation == result.Correlation && r.Unit == result.Unit);
                if (match is null)
                    differences.Add($"{name}: stored {result.Exact} {result.Unit}, not given any more");
                else if (match.Exact != result.Exact || match.Reported != result.Reported || match.Suffix != result.Suffix
                    || match.Equation != result.Equation || match.CorrelationVersion != result.CorrelationVersion)
                    differences.Add($"{name}: stored {result.Exact} {result.Unit} as {result.Reported}{result.Suffix} by {result.CorrelationVersion}, now {match.Exact} as {match.Reported}{match.Suffix} by {match.CorrelationVersion}");
            }
        }

        return d.Results.Count;
    }
}
