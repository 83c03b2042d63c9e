using System.Text.Json;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>Issues the certificate of the release in force: a number never used twice, or the next revision of the batch's own.</summary>
public sealed class IssueCertificate(Func<LabContext> open, TimeProvider clock)
{
    public const string Rule = "certificate-number-is-never-reused";

    /// <returns>The certificate's number and revision; asked again for the same decision, the one that was issued.</returns>
    public async Task<Answer<IssuedCertificate>> Run(Actor actor, string batchNumber, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.Decide))
            return Answer<IssuedCertificate>.Forbidden($"Issuing certificates is for the {Rights.HoldersText(Right.Decide)}.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var batch = await context.Batches.AsNoTracking().FirstOrDefaultAsync(b => b.Number == batchNumber, cancel);
        if (batch is null)
            return Answer<IssuedCertificate>.NotFound($"There is no batch {batchNumber}.");
        var decision = await context.Decisions.AsNoTracking().Where(d => d.BatchId == batch.Id)
            .OrderByDescending(d => d.Sequence).FirstOrDefaultAsync(cancel);
        if (decision?.Kind is not (DecisionKind.Release or DecisionKind.Concession))
            return Answer<IssuedCertificate>.Refused(new Problem("", $"Batch {batchNumber} is not released: there is nothing to certify.", Rule));
        var earlier = await context.Certificates.AsNoTracking().Where(c => c.BatchId == batch.Id)
            .OrderByDescending(c => c.Revision).Select(c => new { c.Id, c.Number, c.Revision, c.DecisionId, c.IssuedAt, c.CheckCode })
            .FirstOrDefaultAsync(cancel);
        if (earlier?.DecisionId == decision.Id)
            return Answer<IssuedCertificate>.Repeated(new IssuedCertificate(earlier.Number, earlier.Revision, earlier.CheckCode));

        var now = clock.GetUtcNow();
        var settings = await SettingsInForce.LoadAsync(context, cancel);
        var number = earlier?.Number ?? await CertificateFiling.NumberAsync(context, settings, now, cancel);
        var revision = (earlier?.Revision ?? 0) + 1;
        var replaces = earlier is null ? null : new ReplacedCertificate(
            earlier.Number, earlier.Revision, await WhyAsync(context, batch.Id, decision, cancel), earlier.IssuedAt);
        var evidence = EvidenceText.Read(await context.Assessments.Where(a => a.Id == decision.AssessmentId).Select(a => a.Evidence).FirstAsync(cancel));
        var amended = await AmendmentLines.LoadAsync(context, evidence, cancel);
        var content = CertificateText.Of(
            settings, evidence, decision, amended, replaces, number, revision,
            CertificateFiling.NewCode(), now);
        var pdf = CertificatePdf.Write(content);
        context.Certificates.Add(new Certificate
        {
            Id = Guid.CreateVersion7(now),
            Number = number,
            Revision = revision,
            BatchId = batch.Id,
            DecisionId = decision.Id,
            ReplacesId = earlier?.Id,
            ReplacesReason = replaces?.Why,
            CheckCode = content.CheckCode,
            IssuedAt = now,
            IssuedBy = actor.Id,
            Pdf = pdf,
            Sha256 = CertificateFiling.Sha256(pdf),
            Content = JsonSerializer.Serialize(content),
        });
        context.Act = actor.Does("issue certificate", replaces?.Why);
        try
        {
            await context.SaveChangesAsync(cancel);
            await transaction.CommitAsync(cancel);
        }
        catch (DbUpdateException e) when (context.IsUniqueViolation(e))
        {
            return Answer<IssuedCertificate>.Conflict("Somebody else issued it at the same moment. Look at the batch again.");
        }

        return Answer<IssuedCertificate>.Done(new IssuedCertificate(number, revision, content.CheckCode));
    }

    private static async Task<string> WhyAsync(LabContext context, Guid batchId, Decision decision, CancellationToken cancel)
    {
        var between = await context.Decisions.AsNoTracking()
            .Where(d => d.BatchId == batchId && d.Sequence < decision.Sequence && d.Kind == DecisionKind.Withdraw)
            .OrderByDescending(d => d.Sequence).Select(d => d.Reason).FirstOrDefaultAsync(cancel);
        if (between is not null)
            return between;
        var previous = await context.Decisions.Where(d => d.BatchId == batchId && d.Sequence == decision.Sequence - 1).Select(d => d.Id).FirstOrDefaultAsync(cancel);
        return await context.ReviewMarks.Where(m => m.DecisionId == previous).OrderByDescending(m => m.At).Select(m => m.Cause).FirstOrDefaultAsync(cancel)
            ?? "released anew";
    }
}
