using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace LabVolatility.Laboratory.Records;

/// <summary>Adds to a notice all that what was changed belongs to, with its numbers: from a determination up to its batch.</summary>
internal static class NoticeReach
{
    public static async Task<Notice> CompleteAsync(Func<LabContext> open, Notice notice, CancellationToken cancellationToken)
    {
        var unknown = new Queue<NamedThing>(notice.BelongsTo.Where(t => t.Name is null));
        if (notice.Much || unknown.Count == 0)
            return notice;
        var reached = notice.BelongsTo.Where(t => t.Name is not null).ToList();
        var seen = notice.Changed.Concat(notice.BelongsTo).Select(t => (t.Kind, t.Key)).ToHashSet();
        await using var lab = open();
        while (unknown.TryDequeue(out var thing))
        {
            if (await FindAsync(lab, thing, cancellationToken) is not { } entry)
                continue;
            reached.Add(TouchedThings.Itself(entry, RecordedMembers.Of(entry.Metadata)));
            foreach (var above in TouchedThings.BelongsTo(entry).Where(t => seen.Add((t.Kind, t.Key))))
            {
                if (above.Name is null)
                    unknown.Enqueue(above);
                else
                    reached.Add(above);
            }
        }

        return notice with { BelongsTo = reached };
    }

    // A frozen assessment is long, and its decision names the batch by itself.
    private static async Task<EntityEntry?> FindAsync(LabContext lab, NamedThing thing, CancellationToken cancellationToken)
    {
        var kind = lab.Model.GetEntityTypes().FirstOrDefault(e => RecordedMembers.SubjectOf(e) == thing.Kind);
        if (kind is null || kind.ClrType == typeof(FrozenAssessment) || !Guid.TryParse(thing.Key, out var id))
            return null;
        return await lab.FindAsync(kind.ClrType, [id], cancellationToken) is { } found ? lab.Entry(found) : null;
    }
}
