using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Demo;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Demo;

/// <summary>The demo in its full length.</summary>
[Collection(SharedDemo.Name)]
public sealed class WholeDemoTests(SharedDemo demo)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Make_AllDays_HasTheSizeOfAWorkingLaboratory()
    {
        await using var lab = (await demo.Whole()).Open();

        Assert.True(await lab.Batches.CountAsync(Cancel) >= 600);
        Assert.True(await lab.Samples.CountAsync(Cancel) >= 2500);
        Assert.Equal(8, await lab.Tanks.CountAsync(Cancel));
        Assert.Equal(4, await lab.Grades.CountAsync(Cancel));
        Assert.True(await lab.AuditRecords.Where(r => r.Action == "record calibration").CountAsync(Cancel) >= 3);
    }

    [Fact]
    public async Task Make_AllDays_ShowsTwoSummersAndTwoWinters()
    {
        await using var lab = (await demo.Whole()).Open();

        var days = await lab.Batches.Select(b => b.From).ToListAsync(Cancel);

        Assert.True(days.Max().DayNumber - days.Min().DayNumber >= 548, "less than eighteen months");
        // A winter is named by the year in which it began.
        Assert.True(days.Where(DemoMarket.CoastSummer.Contains).Select(d => d.Year).Distinct().Count() >= 2);
        Assert.True(days.Where(DemoMarket.CoastWinter.Contains).Select(d => d.AddMonths(-5).Year).Distinct().Count() >= 2);
    }

    [Fact]
    public async Task Make_AllDays_LeavesOnlyTheLastRoundOpen()
    {
        await using var lab = (await demo.Whole()).Open();
        var recent = (await lab.Batches.MaxAsync(b => b.CreatedAt, Cancel)).AddDays(-DemoIncidents.Round);

        var undecided = await lab.Batches
            .Where(b => !lab.Decisions.Any(d => d.BatchId == b.Id && d.Kind != DecisionKind.Hold && d.Kind != DecisionKind.Withdraw
                && !lab.Decisions.Any(l => l.BatchId == b.Id && l.Sequence > d.Sequence)))
            .Select(b => b.CreatedAt).ToListAsync(Cancel);

        Assert.All(undecided, at => Assert.True(at > recent));
        Assert.True(await lab.Decisions.CountAsync(d => d.Kind == DecisionKind.Reject, Cancel) >= 12);
        Assert.True(await lab.Decisions.CountAsync(d => d.Kind == DecisionKind.Concession, Cancel) >= 5);
    }

    [Fact]
    public async Task Make_AllDays_LeavesRecordsThatHold()
    {
        var laboratory = await demo.Whole();

        var replayed = await new Replay(laboratory.Open).Run(Cancel);
        var records = await new CheckRecords(laboratory.Open).Run(Cancel);

        Assert.Empty(replayed.Differences);
        Assert.Empty(records.Findings);
    }
}
