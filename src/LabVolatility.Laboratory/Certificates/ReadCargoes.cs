using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>Reads cargo certificates: the list, one of them, those that name a batch.</summary>
[SuppressMessage("Globalization", "CA1309", Justification = "string.Compare is translated: the database compares as it orders.")]
public sealed class ReadCargoes(Func<LabContext> open)
{
    public const int PageSize = 50;

    /// <summary>The newest number first; each by its latest revision.</summary>
    /// <param name="text">What number, ship, voyage or batch holds; null for all.</param>
    /// <param name="after">The last number of the page before, or null.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<CargoesFound> Run(string? text, string? after, CancellationToken cancel = default)
    {
        await using var context = open();
        var latest = Latest(context);
        if (!string.IsNullOrWhiteSpace(text))
        {
            var (typed, capitals) = (text.Trim(), text.Trim().ToUpperInvariant());
            latest = latest.Where(c => c.Number.Contains(capitals)
                || context.Cargoes.Any(g => g.CertificateId == c.Id
                    && (g.Ship.Contains(typed) || g.Ship.Contains(capitals) || g.Voyage.Contains(typed) || g.Voyage.Contains(capitals)
                        || g.Tanks.Any(t => context.Batches.Any(b => b.Id == t.BatchId && b.Number.Contains(capitals))))));
        }

        if (after is not null)
            latest = latest.Where(c => string.Compare(c.Number, after) < 0);
        var lines = await LinesAsync(context, latest.OrderByDescending(c => c.Number).Take(PageSize + 1), cancel);
        return new CargoesFound([.. lines.Take(PageSize)], lines.Count > PageSize ? lines[PageSize - 1].Number : null);
    }

    /// <summary>Null where no cargo certificate has the number.</summary>
    public async Task<CargoSheet?> One(string number, CancellationToken cancel = default)
    {
        await using var context = open();
        var rows = await context.Certificates.AsNoTracking().Where(c => c.Number == number && c.BatchId == null)
            .OrderByDescending(c => c.Revision).Select(c => new { c.Id, c.Revision, c.CheckCode, c.IssuedAt }).ToListAsync(cancel);
        if (rows.Count == 0)
            return null;
        var content = await context.Certificates.Where(c => c.Id == rows[0].Id).Select(c => c.Content).FirstAsync(cancel);
        var lost = (await CargoCover.LostAsync(context, [rows[0].Id], cancel))[rows[0].Id].ToList();
        return new CargoSheet(
            JsonSerializer.Deserialize<CargoContent>(content)!,
            [.. rows.Select((r, at) => new ReadCertificates.Line(number, r.Revision, r.CheckCode, r.IssuedAt, at > 0 || lost.Count > 0))], lost);
    }

    /// <summary>Those that name a batch, the newest first.</summary>
    public async Task<IReadOnlyList<CargoLine>> OfBatch(Guid batch, CancellationToken cancel = default)
    {
        await using var context = open();
        return await LinesAsync(
            context, Latest(context).Where(c => context.CargoTanks.Any(t => t.CertificateId == c.Id && t.BatchId == batch)).OrderByDescending(c => c.Number), cancel);
    }

    private static IQueryable<Certificate> Latest(LabContext context) => context.Certificates.AsNoTracking()
        .Where(c => c.BatchId == null && !context.Certificates.Any(l => l.ReplacesId == c.Id));

    private static async Task<IReadOnlyList<CargoLine>> LinesAsync(LabContext context, IQueryable<Certificate> certificates, CancellationToken cancel)
    {
        var rows = await certificates.Select(c => new
        {
            c.Id,
            c.Number,
            c.Revision,
            c.IssuedAt,
            SignedBy = context.People.First(p => p.Id == c.IssuedBy).FullName,
            Cargo = context.Cargoes.First(g => g.CertificateId == c.Id),
        }).ToListAsync(cancel);
        var ids = rows.Select(r => r.Id).ToList();
        var tanks = (await context.CargoTanks.AsNoTracking().Where(t => ids.Contains(t.CertificateId))
            .Join(context.Batches, t => t.BatchId, b => b.Id, (t, b) => new { t.CertificateId, t.Place, t.TankCode, b.Number }).ToListAsync(cancel))
            .OrderBy(t => t.Place).ToLookup(t => t.CertificateId, t => $"{t.TankCode} (batch {t.Number})");
        var lost = await CargoCover.LostAsync(context, ids, cancel);
        return
        [
            .. rows.Select(r => new CargoLine
            {
                Number = r.Number,
                Revision = r.Revision,
                Ship = r.Cargo.Ship,
                Voyage = r.Cargo.Voyage,
                Port = r.Cargo.Port,
                Product = r.Cargo.Product,
                Stage = r.Cargo.Stage,
                IssuedAt = r.IssuedAt,
                SignedBy = r.SignedBy,
                Tanks = [.. tanks[r.Id]],
                Lost = [.. lost[r.Id]],
            }),
        ];
    }
}
