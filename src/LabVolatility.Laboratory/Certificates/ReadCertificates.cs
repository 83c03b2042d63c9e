using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>Reads issued certificates: by number for the laboratory, by check code for a recipient.</summary>
public sealed class ReadCertificates(Func<LabContext> open)
{
    /// <summary>The document itself.</summary>
    public sealed record Document(string Number, int Revision, byte[] Pdf, string Sha256);

    /// <summary>What a recipient may know: nothing else.</summary>
    /// <param name="Superseded">A later revision exists, or the release is no longer in force.</param>
    public sealed record Check(string Number, int Revision, string Batch, string Grade, string Decision, DateTimeOffset IssuedAt, bool Superseded);

    /// <summary>A line of a batch's certificates.</summary>
    public sealed record Line(string Number, int Revision, string CheckCode, DateTimeOffset IssuedAt, bool Superseded);

    /// <summary>The latest revision, or the one named; null where there is none.</summary>
    public async Task<Document?> ByNumber(string number, int? revision = null, CancellationToken cancel = default)
    {
        await using var context = open();
        return await context.Certificates.AsNoTracking()
            .Where(c => c.Number == number && (revision == null || c.Revision == revision))
            .OrderByDescending(c => c.Revision).Select(c => new Document(c.Number, c.Revision, c.Pdf, c.Sha256)).FirstOrDefaultAsync(cancel);
    }

    /// <summary>Null for a code that no certificate carries.</summary>
    public async Task<Check?> ByCode(string? code, CancellationToken cancel = default)
    {
        if (!CheckCode.TryParse(code, out var asPrinted))
            return null;
        await using var context = open();
        var found = await context.Certificates.AsNoTracking().Where(c => c.CheckCode == asPrinted)
            .Join(context.Batches, c => c.BatchId, b => b.Id, (c, b) => new { c.Number, c.Revision, c.BatchId, c.DecisionId, c.IssuedAt, Batch = b.Number, b.GradeCode })
            .FirstOrDefaultAsync(cancel);
        if (found is null)
            return null;
        var grade = await context.Grades.Where(g => g.Code == found.GradeCode).Select(g => g.Name).FirstAsync(cancel);
        var kind = await context.Decisions.Where(d => d.Id == found.DecisionId).Select(d => d.Kind).FirstAsync(cancel);
        var superseded = await SupersededAsync(context, found.BatchId, found.DecisionId, cancel);
        return new Check(found.Number, found.Revision, found.Batch, grade, DecisionWords.State(kind), found.IssuedAt, superseded);
    }

    /// <summary>The certificates of a batch, the latest first.</summary>
    public async Task<IReadOnlyList<Line>> OfBatch(string batch, CancellationToken cancel = default)
    {
        await using var context = open();
        var rows = await context.Certificates.AsNoTracking()
            .Where(c => context.Batches.Any(b => b.Id == c.BatchId && b.Number == batch)).OrderByDescending(c => c.Revision)
            .Select(c => new { c.Number, c.Revision, c.CheckCode, c.IssuedAt, c.BatchId, c.DecisionId }).ToListAsync(cancel);
        if (rows.Count == 0)
            return [];
        var inForce = await InForceAsync(context, rows[0].BatchId, cancel);
        return [.. rows.Select(r => new Line(r.Number, r.Revision, r.CheckCode, r.IssuedAt, r.DecisionId != inForce))];
    }

    // A later decision of any kind means that this certificate no longer states what is in force.
    private static async Task<bool> SupersededAsync(LabContext context, Guid batch, Guid decision, CancellationToken cancel) =>
        await InForceAsync(context, batch, cancel) != decision;

    private static Task<Guid> InForceAsync(LabContext context, Guid batch, CancellationToken cancel) =>
        context.Decisions.Where(d => d.BatchId == batch).OrderByDescending(d => d.Sequence).Select(d => d.Id).FirstAsync(cancel);
}
