using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Limits;

/// <summary>Versions of limits and calendars hold on their own days; a later one leaves the days before it alone.</summary>
public sealed class LimitVersionsTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_BeginningLater_LeavesTodaysInForce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", 58.0m);
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        await lab.OwnLimit("contract 7", "EN228-A", 57.0m, from: new DateOnly(2026, 5, 15));

        Assert.Equal([58.0m, 57.0m], await Maxima(lab, new DateOnly(2026, 5, 14), new DateOnly(2026, 5, 15)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_ForAWhile_GivesWayToTheEarlierOneAgain(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", 58.0m);
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        await lab.OwnLimit("contract 7", "EN228-A", 57.0m, from: new DateOnly(2026, 5, 15), until: new DateOnly(2026, 5, 17));

        Assert.Equal(
            [58.0m, 57.0m, 57.0m, 58.0m],
            await Maxima(lab, new DateOnly(2026, 5, 14), new DateOnly(2026, 5, 15), new DateOnly(2026, 5, 17), new DateOnly(2026, 5, 18)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_CoveringTheEarlierOne_TakesItsPlace(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", 58.0m);
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        await lab.OwnLimit("contract 7", "EN228-A", 57.0m);

        Assert.Equal([57.0m], await Maxima(lab, new DateOnly(2026, 5, 14)));
        Assert.Equal(1, await lab.Read(c => c.LaboratoryLimits.CountAsync(l => l.WithdrawnAt != null, TestContext.Current.CancellationToken)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_NameOfAnotherAreas_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", 58.0m);

        var answer = await new KeepLimit(lab.Open, lab.Lab.Clock).Draft(lab.Manager, NewLimit("contract 7", "EN228-B", 68.0m), TestContext.Current.CancellationToken);

        Assert.Equal((AnswerKind.Invalid, "/key"), (answer.Kind, Assert.Single(answer.Problems).Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_RvpWithoutItsEquation_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var limit = new LaboratoryLimit { Key = "x", AreaCode = "US-9.0", Quantity = "RVP", Maximum = 8.5m, Unit = "psi", Digits = 1, Source = "contract" };

        var answer = await new KeepLimit(lab.Open, lab.Lab.Clock).Draft(lab.Manager, limit, TestContext.Current.CancellationToken);

        Assert.Equal((AnswerKind.Invalid, "/correlation"), (answer.Kind, Assert.Single(answer.Problems).Field));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Area_CalendarBeginningLater_LeavesTodaysInForce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnArea("NORTH", ("summer", 5, 1, 9, 30, "EN228-A"));
        lab.Lab.Clock.Advance(TimeSpan.FromMinutes(1));
        var keep = new KeepArea(lab.Open, lab.Lab.Clock);
        var old = NewArea("NORTH", ("summer", 4, 1, 9, 30, "EN228-B"));
        var next = new LaboratoryArea { Code = old.Code, Name = old.Name, Calendar = old.Calendar, Source = old.Source, EffectiveFrom = new DateOnly(2027, 1, 1) };
        Done(await keep.Approve(lab.SecondManager, Done(await keep.Draft(lab.Manager, next, TestContext.Current.CancellationToken)), TestContext.Current.CancellationToken));

        Assert.Equal("EN228-A/DVPE", await Key(lab, new DateOnly(2026, 6, 1)));
        Assert.Equal("EN228-B/DVPE", await Key(lab, new DateOnly(2027, 6, 1)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Area_WithoutDerogation_DoesNotGrantTheAllowanceOfAClass(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnArea("NORTH", ("summer", 5, 1, 9, 30, "EN228-A-W"));
        var batch = await lab.MeasuredBatch("66.5", area: "NORTH", change: b => b with { EthanolPercent = 5m, EthanolMethod = "EN 13132" });

        var limit = await lab.OnlyLimit(batch, "EN228-A-W/DVPE");

        Assert.Equal((60.0m, null), (limit.EffectiveMaximum, limit.Allowance));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_Confirmed_LosesItsFlag(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var keep = new KeepLimit(lab.Open, lab.Lab.Clock);

        Done(await keep.Confirm(lab.Manager, "US-RFG/RVP", "40 CFR 1090.215(a)(3), read 2026", TestContext.Current.CancellationToken));
        var twice = await keep.Confirm(lab.Manager, "US-RFG/RVP", "again", TestContext.Current.CancellationToken);

        var areas = await new LimitCatalogue(lab.Open).Run(TestContext.Current.CancellationToken);
        Assert.Equal(LabVolatility.Core.Methods.FactStatus.Laboratory, areas.Single(a => a.Code == "US-RFG").Limits[0].Limit.Status);
        Assert.Equal(AnswerKind.Conflict, twice.Kind);
    }

    private static async Task<IReadOnlyList<decimal?>> Maxima(GasolineLab lab, params DateOnly[] days)
    {
        var areas = await new LimitCatalogue(lab.Open).Run(TestContext.Current.CancellationToken);
        return [.. days.Select(day => LimitPicker.Pick(areas, Query("EN228-A", day)).Limits.Single(l => l.Limit.Key == "contract 7").EffectiveMaximum)];
    }

    private static async Task<string> Key(GasolineLab lab, DateOnly day)
    {
        var areas = await new LimitCatalogue(lab.Open).Run(TestContext.Current.CancellationToken);
        return LimitPicker.Pick(areas, Query("NORTH", day)).Limits.Single(l => l.Limit.Quantity == "DVPE").Limit.Key;
    }

    private static ProductQuery Query(string area, DateOnly day) =>
        new(European, ProductState.Finished, area, PointOfCompliance.Terminal, day, null);
}
