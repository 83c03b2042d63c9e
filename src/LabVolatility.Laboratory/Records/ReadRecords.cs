using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>Reads the audit records a page at a time, newest first.</summary>
public sealed class ReadRecords(Func<LabContext> open)
{
    public const int PageSize = 50;

    /// <param name="filter">Which ones.</param>
    /// <param name="before">The page before's <see cref="RecordsPage.Next"/>; null for the newest.</param>
    /// <param name="cancellationToken">Stops reading.</param>
    public async Task<RecordsPage> Run(RecordsFilter filter, long? before = null, CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        var records = Matching(lab.AuditRecords.AsNoTracking(), filter);
        if (before is { } sequence)
            records = records.Where(r => r.Sequence < sequence);
        var page = await records.OrderByDescending(r => r.Sequence).Take(PageSize + 1).ToListAsync(cancellationToken);
        return page.Count <= PageSize
            ? new RecordsPage(page, null)
            : new RecordsPage(page[..PageSize], page[PageSize - 1].Sequence);
    }

    /// <summary>The subjects that records speak of, for a filter.</summary>
    public IReadOnlyList<string> Subjects()
    {
        using var lab = open();
        return [.. lab.Model.GetEntityTypes().Where(e => e.ClrType.IsAssignableTo(typeof(IRecorded)))
            .Select(e => RecordedMembers.Of(e).Subject).Order(StringComparer.Ordinal)];
    }

    private static IQueryable<AuditRecord> Matching(IQueryable<AuditRecord> records, RecordsFilter filter)
    {
        if (!string.IsNullOrWhiteSpace(filter.Subject))
            records = records.Where(r => r.Subject == filter.Subject);
        if (!string.IsNullOrWhiteSpace(filter.SubjectId))
            records = records.Where(r => r.SubjectId == filter.SubjectId);
        if (filter.ActorId is { } actor)
            records = records.Where(r => r.ActorId == actor);
        if (filter.From is { } from)
            records = records.Where(r => r.At >= from);
        if (filter.Until is { } until)
            records = records.Where(r => r.At < until);
        return string.IsNullOrWhiteSpace(filter.Text) ? records : Containing(records, filter.Text.Trim().ToLowerInvariant());
    }

    // ToLower() becomes lower() in the database; Contains escapes what LIKE would take for a wildcard.
#pragma warning disable CA1304, CA1311, CA1862
    private static IQueryable<AuditRecord> Containing(IQueryable<AuditRecord> records, string text) => records.Where(r =>
        r.Action.ToLower().Contains(text) || r.Actor.ToLower().Contains(text) || r.SubjectId.ToLower().Contains(text)
        || (r.Reason != null && r.Reason.ToLower().Contains(text)) || (r.After != null && r.After.ToLower().Contains(text)));
#pragma warning restore CA1304, CA1311, CA1862
}
