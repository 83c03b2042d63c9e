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
    private readonly ReadBatch _readBatch = new(cast.Open, cast.Clock);
    private readonly TakeStep _takeStep = new(cast.Open, cast.Clock);
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
        var version = await lab.Batches.Where(b => b.Number == number).Select(b => b.Version).FirstAsync(cancel);
        var request = new BatchRequest { EthanolPercent = percent, EthanolMethod = EthanolMethod };
        DemoCast.Must(await _registerBatch.Change(cast[by], number, version, request, cancel), $"entering ethanol of batch {number}");
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
        var sequence = assessed.InForce?.Sequence ?? 0;
        var request = new DecisionRequest(
            DemoName.Id($"{kind} {sequence} of batch {number}"), number, kind, sequence, assessed.EvidenceHash, reason, DemoPeople.Named(by).Password);
        DemoCast.Must(await _decide.Run(cast[by], request, cancel), $"deciding on batch {number}");
    }

    /// <summary>Takes the step that the tree asks for; the command bears the moment, so that done again it takes nothing further.</summary>
    public async Task TakeStep(string by, string number, CancellationToken cancel)
    {
        var command = DemoName.Id($"step of batch {number} at {cast.Clock.GetUtcNow():O}");
        await using var lab = cast.Open();
        if (await lab.Commands.AnyAsync(c => c.Id == command, cancel))
            return;
        var sheet = await _readBatch.Run(number, cancel);
        var advice = sheet?.Next ?? throw new InvalidOperationException($"Nothing calls for a step on batch {number}.");
        DemoCast.Must(await _takeStep.Run(cast[by], TakeStepRequest.Of(number, advice) with { CommandId = command }, cancel), $"taking a step on batch {number}");
    }

    public async Task IssueCertificate(string by, string number, CancellationToken cancel) =>
        DemoCast.Must(await _issueCertificate.Run(cast[by], number, cancel), $"certifying batch {number}");
}
