using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Methods;

public sealed class ReadPrecisionEntriesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadPrecisionEntries_DraftApprovedWithdrawn_TellsThemApart(StorageEngine engine)
    {
        await using var lab = await TestLaboratory.Create(engine);
        await lab.Add(new LaboratorySettings { Name = "Fjordvik laboratory", TimeZone = "Europe/Oslo" });
        var kari = await lab.AddActor("Kari Moe", Roles.QualityManager);
        var olav = await lab.AddActor("Olav Rud", Roles.QualityManager);
        var keep = new KeepPrecision(lab.Open, lab.Clock);
        var approved = await keep.Draft(kari, Entry(0.8m), Cancel);
        await keep.Approve(olav, approved.Value, Cancel);
        lab.Clock.Advance(TimeSpan.FromMinutes(1));
        await keep.Draft(olav, Entry(0.9m), Cancel);
        lab.Clock.Advance(TimeSpan.FromMinutes(1));
        var mistaken = await keep.Draft(kari, Entry(9.0m), Cancel);
        await keep.Withdraw(kari, mistaken.Value, "a digit too many", Cancel);

        var lines = await new ReadPrecisionEntries(lab.Open).Run("ASTM D5191", Cancel);

        Assert.Equal([9.0m, 0.9m, 0.8m], lines.Select(l => l.Entry.RepeatabilityConstant!.Value));
        Assert.Equal([false, true, false], lines.Select(l => l.IsDraft));
        Assert.Equal([false, false, true], lines.Select(l => l.InForce));
        Assert.Equal(("Kari Moe", "Olav Rud"), (lines[2].DraftedBy, lines[2].ApprovedBy));
        Assert.Empty(await new ReadPrecisionEntries(lab.Open).Run("EN 13016-1", Cancel));
    }

    private static PrecisionEntry Entry(decimal r) => new()
    {
        Method = "ASTM D5191",
        Edition = "22",
        Quantity = "DVPE",
        Unit = PressureUnit.Kilopascal,
        RepeatabilityConstant = r,
        Source = "made up for this test",
    };
}
