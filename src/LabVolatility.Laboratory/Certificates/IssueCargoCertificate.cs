using System.Text.Json;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>Signs and issues the certificate of a cargo: shore tanks with a released batch and one vapour pressure each, or the next revision of one.</summary>
public sealed class IssueCargoCertificate(Func<LabContext> open, TimeProvider clock, ISignature signature)
{
    private const string CommandName = "issue cargo certificate";

    /// <summary>What the signature says.</summary>
    public static string Meaning(CargoRequest request) =>
        $"I certify for {request.Ship?.Trim()} the vapour pressure of {(request.Tanks.Count == 1 ? "shore tank" : "shore tanks")} "
        + $"{string.Join(", ", request.Tanks.Select(t => $"{t.Tank} (batch {t.Batch})"))}, each as sampled, from releases in force.";

    /// <summary>What stands against it, before anybody types a password.</summary>
    public async Task<IReadOnlyList<Problem>> Check(Actor actor, CargoRequest request, CancellationToken cancel = default)
    {
        if (Lacking(actor) is { } lacking)
            return [new Problem("", lacking)];
        await using var context = open();
        var batches = await CargoBatches.LoadAsync(context, Numbers(request), cancel);
        return [.. CargoRules.Fields(request), .. await CargoRules.TanksAsync(context, request, batches, actor, cancel)];
    }

    public async Task<Answer<IssuedCertificate>> Run(Actor actor, CargoRequest request, CancellationToken cancel = default)
    {
        if (Lacking(actor) is { } lacking)
            return Answer<IssuedCertificate>.Forbidden(lacking);
        if (CargoRules.Fields(request) is { Count: > 0 } wrong)
            return Answer<IssuedCertificate>.Invalid(wrong);
        if (!await signature.IsRightAsync(actor, request.Password, cancel))
            return Answer<IssuedCertificate>.Refused(new Problem("/password", "The password is wrong: nothing was signed.", ISignature.Rule));

        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var done = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (done.IsOther)
            return Answer<IssuedCertificate>.Conflict(EarlierCommand.Taken);
        if (done.Subject is { } issued)
            return Answer<IssuedCertificate>.Repeated(await IssuedAsync(context, Guid.Parse(issued), cancel));
        var batches = await CargoBatches.LoadAsync(context, Numbers(request), cancel);
        if (await CargoRules.TanksAsync(context, request, batches, actor, cancel) is { Count: > 0 } refusals)
            return Answer<IssuedCertificate>.Refused(refusals);
        var replaced = await ReplacedAsync(context, request.Replaces, cancel);
        if (request.Replaces is not null && replaced is null)
            return Answer<IssuedCertificate>.NotFound($"There is no cargo certificate {request.Replaces}.");
        if (replaced is not null && replaced.Revision != request.ReplacesRevision)
            return Answer<IssuedCertificate>.Conflict($"Somebody issued revision {replaced.Revision} of {replaced.Number} meanwhile. Look at it, then sign.");

        var certificate = await FileAsync(context, actor, request, batches, replaced, cancel);
        try
        {
            await context.SaveChangesAsync(cancel);
            await transaction.CommitAsync(cancel);
        }
        catch (DbUpdateException e) when (DatabaseRefusal.Of(context, e) is { } refusal)
        {
            return Answer<IssuedCertificate>.Refused(refusal);
        }

        return Answer<IssuedCertificate>.Done(new IssuedCertificate(certificate.Number, certificate.Revision, certificate.CheckCode));
    }

    private static string? Lacking(Actor actor) =>
        actor.IsKey ? "No key can sign a cargo certificate: a person signs in and signs." : actor.Lacks(Right.Decide, "Signing cargo certificates");

    private static List<string> Numbers(CargoRequest request) => [.. request.Tanks.Select(t => t.Batch?.Trim()).OfType<string>()];

    private static Task<IssuedCertificate> IssuedAsync(LabContext context, Guid id, CancellationToken cancel) =>
        context.Certificates.Where(c => c.Id == id).Select(c => new IssuedCertificate(c.Number, c.Revision, c.CheckCode)).FirstAsync(cancel);

    private static Task<Replaced?> ReplacedAsync(LabContext context, string? number, CancellationToken cancel) =>
        context.Certificates.Where(c => c.Number == number && c.BatchId == null).OrderByDescending(c => c.Revision)
            .Select(c => new Replaced(c.Id, c.Number, c.Revision, c.IssuedAt)).FirstOrDefaultAsync(cancel);

    private async Task<Certificate> FileAsync(
        LabContext context, Actor actor, CargoRequest request, IReadOnlyDictionary<string, CargoBatch> batches, Replaced? replaced, CancellationToken cancel)
    {
        var now = clock.GetUtcNow();
        var settings = await context.Settings.AsNoTracking().FirstAsync(cancel);
        var number = replaced?.Number ?? await CertificateFiling.NumberAsync(context, settings, now, cancel);
        var why = replaced is null ? null : request.ReplacesWhy!.Trim();
        var content = CargoText.Of(
            settings, request, batches, actor, number, (replaced?.Revision ?? 0) + 1, CertificateFiling.NewCode(), now,
            replaced is null ? null : new ReplacedCertificate(replaced.Number, replaced.Revision, why!, replaced.IssuedAt));
        var pdf = CargoPdf.Write(content);
        var certificate = new Certificate
        {
            Id = Guid.CreateVersion7(now),
            Number = number,
            Revision = content.Revision,
            ReplacesId = replaced?.Id,
            ReplacesReason = why,
            CheckCode = content.CheckCode,
            IssuedAt = now,
            IssuedBy = actor.Id,
            Pdf = pdf,
            Sha256 = CertificateFiling.Sha256(pdf),
            Content = JsonSerializer.Serialize(content),
        };
        context.Certificates.Add(certificate);
        context.Cargoes.Add(CargoText.Row(certificate.Id, content, request, batches));
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = certificate.Id.ToString(), At = now });
        context.Act = actor.Does(CommandName, why);
        return certificate;
    }

    private sealed record Replaced(Guid Id, string Number, int Revision, DateTimeOffset IssuedAt);
}
