using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Limits;

public sealed class ReadAreaTests
{
    private const string Coast = "NORTH-COAST";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadArea_ApprovedTwice_ShowsBothVersionsByName(StorageEngine engine)
    {
        await using var lab = await TestLaboratory.Create(engine);
        var (kari, olav) = await Managers(lab);
        var keep = new KeepArea(lab.Open, lab.Clock);
        var first = await keep.Draft(kari, Area("EN228-A"), Cancel);
        await keep.Approve(olav, first.Value, Cancel);
        lab.Clock.Advance(TimeSpan.FromHours(1));
        await keep.Draft(olav, Area("EN228-B"), Cancel);

        var sheet = await new ReadArea(lab.Open).Run(Coast, Cancel);

        Assert.Equal(["Olav Rud", "Kari Moe"], sheet!.Versions.Select(v => v.DraftedBy));
        Assert.Equal([null, "Olav Rud"], sheet.Versions.Select(v => v.ApprovedBy));
        Assert.Equal("EN228-A", sheet.On(new DateOnly(2026, 7, 1))!.Calendar[0].Class);
        Assert.False(sheet.Ships);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadArea_DraftOnly_IsFoundAndCountsForNothing(StorageEngine engine)
    {
        await using var lab = await TestLaboratory.Create(engine);
        var (kari, _) = await Managers(lab);
        await new KeepArea(lab.Open, lab.Clock).Draft(kari, Area("EN228-A"), Cancel);

        var sheet = await new ReadArea(lab.Open).Run(Coast, Cancel);
        var list = await new ReadLimits(lab.Open).Run(Cancel);

        Assert.Empty(sheet!.Known);
        Assert.Null(sheet.On(new DateOnly(2026, 7, 1)));
        Assert.Equal([new LimitDraft(null, Coast, "Kari Moe", lab.Clock.GetUtcNow())], list.Drafts);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadArea_ShippedLimitConfirmed_NamesWhoReadItWhere(StorageEngine engine)
    {
        await using var lab = await TestLaboratory.Create(engine);
        var (kari, _) = await Managers(lab);
        await new KeepLimit(lab.Open, lab.Clock).Confirm(kari, "US-RFG/RVP", "40 CFR 1090.215(a)(3), copy of 2026", Cancel);

        var sheet = await new ReadArea(lab.Open).Run("US-RFG", Cancel);

        var confirmed = Assert.Single(sheet!.Confirmed);
        Assert.Equal(("US-RFG/RVP", "Kari Moe"), (confirmed.Key, confirmed.By));
        Assert.True(sheet.Ships);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadArea_UnknownCode_IsNull(StorageEngine engine)
    {
        await using var lab = await TestLaboratory.Create(engine);

        Assert.Null(await new ReadArea(lab.Open).Run("NOWHERE", Cancel));
    }

    private static LaboratoryArea Area(string summer) => new()
    {
        Code = Coast,
        Name = "North coast",
        Source = "made up for this test",
        EffectiveFrom = new DateOnly(2026, 1, 1),
        Calendar =
        [
            new SeasonWindow("summer", new MonthDay(5, 1), new MonthDay(9, 30), Class: summer),
            new SeasonWindow("winter", new MonthDay(10, 1), new MonthDay(4, 30), Class: "EN228-D"),
        ],
    };

    private static async Task<(Actor Kari, Actor Olav)> Managers(TestLaboratory lab)
    {
        await lab.Add(new LaboratorySettings { Name = "Fjordvik laboratory", TimeZone = "Europe/Oslo" });
        return (await lab.AddActor("Kari Moe", Roles.QualityManager), await lab.AddActor("Olav Rud", Roles.QualityManager));
    }
}
