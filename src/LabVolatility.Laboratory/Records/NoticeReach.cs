using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>Adds to a notice the samples and batches, with their numbers, that what was changed belongs to.</summary>
internal static class NoticeReach
{
    public static async Task<Notice> CompleteAsync(Func<LabContext> open, Notice notice, CancellationToken cancellationToken)
    {
        var samples = Ids<Sample>(notice);
        var determinations = Ids<Determination>(notice);
        var decisions = Ids<Decision>(notice);
        var batches = Ids<Batch>(notice);
        if (notice.Much || samples.Count + determinations.Count + decisions.Count + batches.Count == 0)
            return notice;

        await using var lab = open();
        if (samples.Count == 0 && determinations.Count > 0)
            samples = await lab.Determinations.Where(d => determinations.Contains(d.Id)).Select(d => d.SampleId).Distinct().ToListAsync(cancellationToken);
        var ofSamples = samples.Count == 0
            ? []
            : await lab.Samples.Where(s => samples.Contains(s.Id)).Select(s => new { s.Id, s.Number, s.BatchId }).ToListAsync(cancellationToken);
        batches = [.. batches.Union(ofSamples.Select(s => s.BatchId).OfType<Guid>())];
        var ofBatches = batches.Count + decisions.Count == 0
            ? []
            : await lab.Batches
                .Where(b => batches.Contains(b.Id) || lab.Decisions.Any(d => d.BatchId == b.Id && decisions.Contains(d.Id)))
                .Select(b => new { b.Id, b.Number }).ToListAsync(cancellationToken);
        return notice with
        {
            BelongsTo =
            [
                .. ofSamples.Select(s => Thing<Sample>(s.Id, s.Number)),
                .. ofBatches.Select(b => Thing<Batch>(b.Id, b.Number)),
                .. notice.BelongsTo.Where(t => t.Name is not null),
            ],
        };
    }

    private static List<Guid> Ids<T>(Notice notice) =>
        [.. notice.Changed.Concat(notice.BelongsTo).Where(t => t.Kind == RecordedMembers.SubjectOf(typeof(T))).Select(t => Guid.Parse(t.Key)).Distinct()];

    private static NamedThing Thing<T>(Guid id, string number) => new(RecordedMembers.SubjectOf(typeof(T)), id.ToString("D"), number);
}
