using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>Walks the chain from its first record: numbers without a gap, each hash over its record and the hash before.</summary>
internal sealed class ChainReader(Findings findings)
{
    public long Count { get; private set; }

    public string? Head { get; private set; }

    public LastTexts Last { get; } = new();

    public async Task WalkAsync(LabContext lab, CancellationToken cancellationToken)
    {
        var expected = 1L;
        var previous = Chain.Genesis;
        await foreach (var record in lab.AuditRecords.AsNoTracking().OrderBy(r => r.Sequence).AsAsyncEnumerable().WithCancellation(cancellationToken))
        {
            if (record.Sequence != expected)
                findings.AddBroken(record.Sequence, $"Audit records {expected} to {record.Sequence - 1} are missing.");
            if (record.PreviousHash != previous)
                findings.AddBroken(record.Sequence, $"Audit record {record.Sequence} does not follow the record before it.");
            if (record.Hash != Chain.HashOf(record))
                findings.AddBroken(record.Sequence, $"Audit record {record.Sequence} was changed: its hash is not that of what it says.");
            Last.Set(record.Subject, record.SubjectId, record.After);
            expected = record.Sequence + 1;
            previous = record.Hash;
            Count++;
        }

        Head = Count == 0 ? null : previous;
    }
}
