using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Batches;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Tests.Setup;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

/// <summary>A batch as typed becomes a request; what can't be read is named beside its field.</summary>
public sealed class BatchEntryTests
{
    [Fact]
    public async Task Read_TypedWell_IsTheRequest()
    {
        await using var host = await LabHost.StartAsync();
        var clock = host.Services.GetRequiredService<LabClock>();
        var entry = new BatchEntry { Number = " 26-1042 ", Grade = "G95", Volume = "5000,5", Ethanol = "9.8", From = "2026-05-10", Until = "2026-05-20", NeededBy = "2026-05-10 14:05" };
        entry.Destinations.AddRange(
        [
            new DestinationEntry(), new DestinationEntry { Area = "EN228-A" }, new DestinationEntry { Area = "EN228-A" },
            new DestinationEntry { Area = "EN228-A", Point = PointOfCompliance.Retail },
        ]);

        var (request, problems) = entry.Read(clock);

        Assert.Empty(problems);
        Assert.Equal(("26-1042", 5000.5m, 9.8m), (request.Number, request.CubicMetres, request.EthanolPercent));
        Assert.Equal((new DateOnly(2026, 5, 10), new DateOnly(2026, 5, 20)), (request.From, request.Until));
        Assert.Equal(clock.Local(request.NeededBy!.Value).DateTime, new DateTime(2026, 5, 10, 14, 5, 0));
        Assert.Equal([new Destination("EN228-A", PointOfCompliance.Terminal), new Destination("EN228-A", PointOfCompliance.Retail)], request.Destinations);
        Assert.Equal(2, entry.Destinations.Count);
        Assert.Equal(request.CommandId, entry.Read(clock).Request.CommandId);
    }

    [Fact]
    public async Task Read_TypedBadly_NamesEachFieldAndKeepsTheText()
    {
        await using var host = await LabHost.StartAsync();
        var clock = host.Services.GetRequiredService<LabClock>();
        var entry = new BatchEntry { Volume = "much", Ethanol = "101", From = "10.5.2026", Until = "2026-02-30", NeededBy = "tonight" };

        var (_, problems) = entry.Read(clock);

        Assert.Equal(["/volume", "/ethanolPercent", "/from", "/until", "/neededBy"], problems.Select(p => p.Field));
        Assert.Equal(("much", "tonight"), (entry.Volume, entry.NeededBy));
        Assert.Null(Assert.Single(entry.Destinations).Area);
    }
}
