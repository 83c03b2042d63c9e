using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Samples;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>What the demo's people do with batches and tanks.</summary>
internal sealed class DemoBatchActs(DemoCast cast)
{
    private const string EthanolMethod = "EN 13132";

    private readonly RegisterBatch _registerBatch = new(cast.Open, cast.Clock);
    private readonly RecordMovement _recordMovement = new(cast.Open, cast.Clock);
    private readonly AssessBatch _assessBatch = new(cast.Open);
    private readonly Decide _decide = new(cast.Open, cast.Clock, new DemoSignature());
    private readonly IssueCertificate _issueCertificate = new(cast.Open, cast.Clock);

    public async Task Register(string by, BatchRequest request, CancellationToken cancel)
    {
        var command = request with { CommandId = DemoName.Id($"register batch {request.Number}") };
        DemoCast.Must(await _registerBatch.Run(cast[by], command, cancel), $"registering batch {request.Number}");
    }

    /// <summary>Enters the ethanol content as it was measured.</summary>
    public async Task MeasureEthanol(string by, string number, decimal percent, CancellationToken cancel)
    {
        await using var lab = cast.Open();
        var batch = await lab.Batches.AsNoTracking().FirstAsync(b => b.Number == number, cancel);
        if (batch.EthanolMethod is not null)
            return;
        var request = new BatchRequest { EthanolPercent = percent, EthanolMethod = EthanolMethod };
        DemoCast.Must(await _registerBatch.Change(cast[by], number, batch.Version, request, cancel), $"entering ethanol of batch {number}");
    }

    public async Task Move(string by, string tank, MovementKind kind, decimal? cubicMetres, string note, CancellationToken cancel)
    {
        var at = cast.Clock.GetUtcNow();
        var request = new RecordMovement.Request(DemoName.Id($"{kind} in {tank} at {at:O}"), tank, kind, at, cubicMetres, note);
        DemoCast.Must(await _recordMovement.Run(cast[by], request, cancel), $"recording a movement in {tank}");
    }

    public async Task Decide(string by, string number, DecisionKind kind, string? reason, CancellationToken cancel)
    {
        var assessed = await _assessBatch.Run(number, cancel) ?? throw new InvalidOperationException($"The demo has no batch {number}.");
        var request = new DecisionRequest(
            DemoName.Id($"{kind} of batch {number}"), number, kind, assessed.InForce?.Sequence ?? 0, assessed.EvidenceHash, reason,
            DemoPeople.Named(by).Password);
        DemoCast.Must(await _decide.Run(cast[by], request, cancel), $"deciding on batch {number}");
    }

    public async Task IssueCertificate(string by, string number, CancellationToken cancel)
    {
        // Gone on with after a break, the release may have been withdrawn already.
        await using var lab = cast.Open();
        if (await lab.Certificates.AnyAsync(c => lab.Batches.Any(b => b.Id == c.BatchId && b.Number == number), cancel))
            return;
        DemoCast.Must(await _issueCertificate.Run(cast[by], number, cancel), $"certifying batch {number}");
    }
}
