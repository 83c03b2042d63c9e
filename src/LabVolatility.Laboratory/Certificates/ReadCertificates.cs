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
    /// <param name="Batch">For a cargo all its batches; grade and decision likewise.</param>
    /// <param name="Superseded">A later revision exists, or a release that it rests on is no longer in force.</param>
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
            .Select(c => new { c.Id, c.Number, c.Revision, c.BatchId, c.DecisionId, c.IssuedAt }).FirstOrDefaultAsync(cancel);
        if (found is null)
            return null;
        var covered = found is { BatchId: { } batch, DecisionId: { } decision }
            ? [(batch, decision)]
            : await CargoCover.AllAsync(context, found.Id, cancel);
        var named = new List<(string Batch, string Grade, string Decision)>();
        foreach (var (batchId, decisionId) in covered)
            named.Add(await NamedAsync(context, batchId, decisionId, cancel));
        var superseded = found is { BatchId: { } own, DecisionId: { } its }
            ? await InForceAsync(context, own, cancel) != its
            : await CargoCover.IsSupersededAsync(context, found.Id, cancel);
        return new Check(
            found.Number, found.Revision, Listed(named.Select(n => n.Batch)), Listed(named.Select(n => n.Grade)),
            Listed(named.Select(n => n.Decision)), found.IssuedAt, superseded);
    }

    private static async Task<(string Batch, string Grade, string Decision)> NamedAsync(LabContext context, Guid batchId, Guid decision, CancellationToken cancel)
    {
        var batch = await context.Batches.Where(b => b.Id == batchId)
            .Join(context.Grades, b => b.GradeCode, g => g.Code, (b, g) => new { b.Number, g.Name }).FirstAsync(cancel);
        return (batch.Number, batch.Name, DecisionWords.State(await context.Decisions.Where(d => d.Id == decision).Select(d => d.Kind).FirstAsync(cancel)));
    }

    private static string Listed(IEnumerable<string> words) => string.Join(", ", words.Distinct());

    /// <summary>The certificates of a batch, the latest first.</summary>
    public async Task<IReadOnlyList<Line>> OfBatch(string batch, CancellationToken cancel = default)
    {
        await using var context = open();
        var rows = await context.Certificates.AsNoTracking()
            .Where(c => context.Batches.Any(b => b.Id == c.BatchId && b.Number == batch)).OrderByDescending(c => c.Revision)
            .Select(c => new { c.Number, c.Revision, c.CheckCode, c.IssuedAt, c.BatchId, c.DecisionId }).ToListAsync(cancel);
        if (rows.Count == 0)
            return [];
        var inForce = await InForceAsync(context, rows[0].BatchId!.Value, cancel);
        return [.. rows.Select(r => new Line(r.Number, r.Revision, r.CheckCode, r.IssuedAt, r.DecisionId != inForce))];
    }

    // A later decision of any kind means that a certificate no longer states what is in force.
    private static Task<Guid> InForceAsync(LabContext context, Guid batch, CancellationToken cancel) =>
        context.Decisions.Where(d => d.BatchId == batch).OrderByDescending(d => d.Sequence).Select(d => d.Id).FirstAsync(cancel);
}
