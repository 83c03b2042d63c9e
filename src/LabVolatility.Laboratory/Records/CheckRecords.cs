using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Records;

/// <summary>Finds what was changed behind the program's back: in the chain, and in the rows it speaks of.</summary>
/// <remarks>
/// Everything is read in one state of the database, while others go on working. Members that aren't recorded
/// (passwords' hashes, row versions) aren't checked. Who rebuilds the whole chain is found out only by a head that
/// was kept elsewhere.
/// </remarks>
public sealed class CheckRecords(Func<LabContext> open)
{
    public async Task<RecordsReport> Run(CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        await using var snapshot = await lab.Engine.BeginSnapshotAsync(lab, cancellationToken);
        var findings = new Findings();
        var chain = new ChainReader(findings);
        await chain.WalkAsync(lab, cancellationToken);
        foreach (var entity in lab.Model.GetEntityTypes().Where(e => e.ClrType.IsAssignableTo(typeof(IRecorded))))
        {
            var table = entity.GetTableName();
            var subject = RecordedMembers.Of(entity).Subject;
            await RowReader.ReadAsync(lab, entity, Compare, cancellationToken);

            void Compare(string id, string text)
            {
                var isRecorded = chain.Last.Take(subject, id, text);
                if (isRecorded is null)
                    findings.Add($"{table}, row {id}: no audit record speaks of it; it was put there past the program.");
                else if (isRecorded is false)
                    findings.Add($"{table}, row {id}: it is not what its last audit record says; it was changed past the program.");
            }
        }

        await NameVanishedAsync(lab, chain.Last, findings, cancellationToken);
        return new RecordsReport(findings.None, chain.Count, chain.Head, findings.FirstBroken, findings.Words);
    }

    private static async Task NameVanishedAsync(LabContext lab, LastTexts last, Findings findings, CancellationToken cancellationToken)
    {
        if (!last.AwaitsAny())
            return;
        var named = new HashSet<string>();
        var things = lab.AuditRecords.AsNoTracking().OrderBy(r => r.Sequence).Select(r => new { r.Subject, r.SubjectId });
        await foreach (var thing in things.AsAsyncEnumerable().WithCancellation(cancellationToken))
        {
            if (last.Awaits(thing.Subject, thing.SubjectId) && named.Add($"{thing.Subject}, {thing.SubjectId}"))
                findings.Add($"{thing.Subject}, {thing.SubjectId}: its row is gone, and no audit record says that it was deleted.");
        }
    }
}
