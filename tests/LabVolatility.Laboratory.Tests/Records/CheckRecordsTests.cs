using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Records;

public sealed class CheckRecordsTests
{
    private const int Round = 125;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // Eight databases: 1,000 changes in all.
    public static TheoryData<StorageEngine, bool, int> Rounds => new()
    {
        { StorageEngine.Sqlite, false, 1 }, { StorageEngine.Sqlite, false, 2 }, { StorageEngine.Sqlite, false, 3 }, { StorageEngine.Sqlite, true, 4 },
        { StorageEngine.Postgres, false, 5 }, { StorageEngine.Postgres, false, 6 }, { StorageEngine.Postgres, false, 7 }, { StorageEngine.Postgres, true, 8 },
    };

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_NothingWritten_Intact(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);

        var report = await new CheckRecords(laboratory.Open).Run(Cancel);

        Assert.Equal((true, 0L, null, null), (report.Intact, report.Records, report.Head, report.FirstBroken));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_EveryKindOfThing_Intact(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await FullScene.Create(laboratory);
        await using var lab = laboratory.Open();
        var last = await lab.AuditRecords.OrderByDescending(r => r.Sequence).FirstAsync(Cancel);

        var report = await new CheckRecords(laboratory.Open).Run(Cancel);

        Assert.Empty(report.Findings);
        Assert.Equal((true, last.Sequence, last.Hash), (report.Intact, report.Records, report.Head));
    }

    [Theory, MemberData(nameof(Rounds))]
    public async Task Run_SingleCellsChanged_NamesEach(StorageEngine engine, bool inTheTrail, int seed)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await FillAsync(laboratory);
        await using var tampering = await Tampering.Begin(laboratory);
        var cells = (await tampering.Cells(inTheTrail)).ToArray();
        new Random(seed).Shuffle(cells);
        var changed = new List<Tampering.Cell>();
        foreach (var row in cells.GroupBy(c => (c.Table, c.Id)).Take(Round * 2))
        {
            foreach (var cell in row)
            {
                if (changed.Count < Round && await tampering.Change(cell))
                {
                    changed.Add(cell);
                    break;
                }
            }
        }

        var report = await new CheckRecords(laboratory.Open).Run(Cancel);

        Assert.Equal(Round, changed.Count);
        Assert.False(report.Intact);
        Assert.All(changed, cell => Assert.Contains(report.Findings, f => Names(f, cell, inTheTrail)));
        Assert.Equal(inTheTrail, report.FirstBroken is not null);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_RowGoneRowSlippedInKeyChanged_NamesEach(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await laboratory.Add(
            new Tank { Code = "T-1", Name = "Tank 1" }, new Tank { Code = "T-2", Name = "Tank 2" }, new Tank { Code = "T-3", Name = "Tank 3" });
        await using var tampering = await Tampering.Begin(laboratory);
        await tampering.Run("DELETE FROM tanks WHERE code = 'T-1'");
        await tampering.Run("INSERT INTO tanks (code, name, version) SELECT 'T-9', name, version FROM tanks WHERE code = 'T-2'");
        await tampering.Run("UPDATE tanks SET code = 'T-4' WHERE code = 'T-3'");

        var report = await new CheckRecords(laboratory.Open).Run(Cancel);

        Assert.Null(report.FirstBroken);
        Assert.Equal(
            [
                "tank, T-1: its row is gone, and no audit record says that it was deleted.",
                "tank, T-3: its row is gone, and no audit record says that it was deleted.",
                "tanks, row T-4: no audit record speaks of it; it was put there past the program.",
                "tanks, row T-9: no audit record speaks of it; it was put there past the program.",
            ],
            report.Findings.Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_AuditRecordGone_NamesTheGap(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await FullScene.Create(laboratory);
        await using var tampering = await Tampering.Begin(laboratory);
        await tampering.Run("DELETE FROM audit_records WHERE sequence IN (4, 5)");

        var report = await new CheckRecords(laboratory.Open).Run(Cancel);

        Assert.Equal(6, report.FirstBroken);
        Assert.Contains("Audit records 4 to 5 are missing.", report.Findings);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_NonsenseInCells_IsAFindingNoFailure(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await FullScene.Create(laboratory);
        await using var tampering = await Tampering.Begin(laboratory);
        await tampering.Run(engine is StorageEngine.Sqlite
            ? "UPDATE results SET value = x'FF', status = 17; UPDATE samples SET registered_at = 'soon'; UPDATE audit_records SET at = 9223372036854775807 WHERE sequence = 3"
            : "UPDATE results SET value = 'NaN'; UPDATE samples SET registered_at = 'infinity'; UPDATE audit_records SET at = '-infinity' WHERE sequence = 3");
        await tampering.Run("UPDATE determination_revisions SET readings = 'no json'");

        var report = await new CheckRecords(laboratory.Open).Run(Cancel);

        Assert.Equal(3, report.FirstBroken);
        Assert.Contains(report.Findings, f => f.StartsWith($"results, row {scene.Determination.Results[0].Id}", StringComparison.Ordinal));
        Assert.Contains(report.Findings, f => f.StartsWith($"samples, row {scene.Sample.Id}", StringComparison.Ordinal));
        Assert.Contains(report.Findings, f => f.StartsWith("determination_revisions, row ", StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_OthersWrite_KeepsNobodyWaiting(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await FillAsync(laboratory);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        var writing = Task.Run(async () =>
        {
            var written = 0;
            while (!stop.IsCancellationRequested)
                await laboratory.Add(new Tank { Code = $"N-{++written}", Name = "Tank" });
            return written;
        }, Cancel);

        var reports = new List<RecordsReport>();
        for (var i = 0; i < 5; i++)
            reports.Add(await new CheckRecords(laboratory.Open).Run(Cancel));
        await stop.CancelAsync();

        Assert.True(await writing > 0);
        Assert.All(reports, r => Assert.Empty(r.Findings));
    }

    private static bool Names(string finding, Tampering.Cell cell, bool inTheTrail) =>
        finding.StartsWith(inTheTrail ? $"Audit record {cell.Id} " : $"{cell.Table}, row {cell.Id}: ", StringComparison.Ordinal);

    private static async Task FillAsync(TestLaboratory laboratory)
    {
        var scene = await FullScene.Create(laboratory);
        var samples = Enumerable.Range(0, 40).Select(_ => scene.NewSample(scene.Batch.Id)).ToList();
        await laboratory.Add([.. samples, .. samples.Select(s => scene.NewDetermination(s))]);
    }
}
