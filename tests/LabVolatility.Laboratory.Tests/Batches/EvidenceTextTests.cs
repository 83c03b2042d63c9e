using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>The same facts give the same text and hash: on both engines, and however often they are read.</summary>
public sealed class EvidenceTextTests
{
    [Fact]
    public async Task Evidence_SameFacts_IsTheSameTextOnBothEngines()
    {
        var sqlite = await Text(StorageEngine.Sqlite);
        var postgres = await Text(StorageEngine.Postgres);

        Assert.Equal(sqlite, postgres);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Evidence_ReadAgain_HasTheSameHash(StorageEngine engine)
    {
        await using var lab = await Create(engine, InDuplicate);
        var batch = await Work(lab);
        var seen = await lab.Assess(batch);

        var again = await lab.Assess(batch);
        var frozen = EvidenceText.Of(EvidenceText.Read(EvidenceText.Of(seen.Evidence)));

        Assert.Equal(seen.EvidenceHash, again.EvidenceHash);
        Assert.Equal(seen.EvidenceHash, EvidenceText.Hash(frozen));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Evidence_Frozen_HasTheHashThatWasSigned(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.ReleasedBatch("65.00");

        var stored = await lab.Read(c => c.Assessments.SingleAsync(TestContext.Current.CancellationToken));

        Assert.Equal(stored.EvidenceHash, EvidenceText.Hash(stored.Evidence));
        Assert.Equal(stored.EvidenceHash, (await lab.Assess(batch)).EvidenceHash);
    }

    private static async Task<string> Text(StorageEngine engine)
    {
        await using var lab = await Create(engine, grade =>
        {
            InDuplicate(grade);
            grade.Confidence = 0.950m;
        });
        var text = EvidenceText.Of((await lab.Assess(await Work(lab))).Evidence);
        // Ids are made anew in each database, but for the people's: name them by their order.
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        return System.Text.RegularExpressions.Regex.Replace(text, "[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}", id =>
            names.TryGetValue(id.Value, out var known) ? known : names[id.Value] = $"id {names.Count}");
    }

    // Everything that an engine could pad, cut, order or zone in its own way.
    private static async Task<string> Work(GasolineLab lab)
    {
        await lab.Precision(1.50m, 3.000m);
        await lab.OwnLimit("b contract", "EN228-A", maximum: 60.00m);
        await lab.OwnLimit("a contract", "EN228-A", maximum: 59.50m);
        var batch = await lab.Batch(change: b => b with { EthanolPercent = 4.90m, EthanolMethod = "EN 13132", CubicMetres = 7.00m });
        var sample = await lab.Sample(batch, 4);
        var id = await lab.Measure(sample, "65,00");
        await lab.Measure(sample, "65.4", 2, lab.SecondAnalyst);
        Done(await lab.Amend(lab.Chemist, id, "65.10"));
        Done(await lab.Verify(lab.Analyst, true));
        return batch;
    }
}
