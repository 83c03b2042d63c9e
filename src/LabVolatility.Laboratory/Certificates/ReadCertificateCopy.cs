using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>A copy of a certificate to be looked at: as issued, with a stamp on top where it is no longer in force.</summary>
public sealed class ReadCertificateCopy(Func<LabContext> open)
{
    /// <param name="Stamp">Why it is no longer in force; null where it is.</param>
    public sealed record Copy(string Number, int Revision, byte[] Pdf, string? Stamp);

    /// <summary>The latest revision, or the one named; null where there is none.</summary>
    public Task<Copy?> Run(string number, int? revision = null, CancellationToken cancel = default) =>
        CopyAsync(certificates => certificates.Where(c => c.Number == number && (revision == null || c.Revision == revision)), cancel);

    /// <summary>The latest certificate of a batch; null where none was issued.</summary>
    public Task<Copy?> OfBatch(string batch, CancellationToken cancel = default) =>
        CopyAsync((certificates, context) => certificates.Where(c => context.Batches.Any(b => b.Id == c.BatchId && b.Number == batch)), cancel);

    private Task<Copy?> CopyAsync(Func<IQueryable<Certificate>, IQueryable<Certificate>> choose, CancellationToken cancel) =>
        CopyAsync((certificates, _) => choose(certificates), cancel);

    private async Task<Copy?> CopyAsync(Func<IQueryable<Certificate>, LabContext, IQueryable<Certificate>> choose, CancellationToken cancel)
    {
        await using var context = open();
        var certificate = await choose(context.Certificates.AsNoTracking(), context).OrderByDescending(c => c.Revision).FirstOrDefaultAsync(cancel);
        if (certificate is null)
            return null;
        var stamp = await StampAsync(context, certificate, cancel);
        return new Copy(
            certificate.Number, certificate.Revision,
            stamp is null ? certificate.Pdf : CertificateStamp.Apply(certificate.Pdf, stamp), stamp);
    }

    private static async Task<string?> StampAsync(LabContext context, Certificate certificate, CancellationToken cancel)
    {
        var latest = await context.Certificates.Where(c => c.Number == certificate.Number).MaxAsync(c => c.Revision, cancel);
        if (latest > certificate.Revision)
            return $"SUPERSEDED by {certificate.Number}, revision {latest}";
        if (certificate.BatchId is not { } batch)
        {
            var lost = (await CargoCover.LostAsync(context, [certificate.Id], cancel))[certificate.Id].ToList();
            return lost.Count == 0 ? null : $"NO LONGER COVERS {string.Join("; ", lost.Select(l => l.Text))}";
        }

        var inForce = await context.Decisions.AsNoTracking().Where(d => d.BatchId == batch)
            .OrderByDescending(d => d.Sequence).Select(d => new { d.Id, d.Kind, d.PersonName, d.At }).FirstAsync(cancel);
        if (inForce.Id == certificate.DecisionId)
            return null;
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var day = $"{time.Local(inForce.At):yyyy-MM-dd HH:mm}";
        return inForce.Kind == DecisionKind.Withdraw
            ? $"WITHDRAWN by {inForce.PersonName}, {day}"
            : $"NO LONGER IN FORCE: the batch is {DecisionWords.State(inForce.Kind)} since {day}";
    }
}
