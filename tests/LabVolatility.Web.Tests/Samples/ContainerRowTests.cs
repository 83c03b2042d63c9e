using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Samples;
using Xunit;

namespace LabVolatility.Web.Tests.Samples;

public sealed class ContainerRowTests
{
    [Fact]
    public void Read_VolumesWithUnits_AreMillilitres()
    {
        var problems = new List<Problem>();

        var read = ContainerRow.Read([new() { Volume = "1 L", Fill = "75,5" }, new() { Volume = "250" }], problems, received: true);

        Assert.Empty(problems);
        Assert.Equal([1000m, 250m], read.Select(r => r.VolumeMillilitres));
        Assert.Equal(75.5m, read[0].FillPercent);
    }

    [Fact]
    public void Read_WhatCannotBeRead_IsSaidByField()
    {
        var problems = new List<Problem>();

        ContainerRow.Read([new(), new() { Volume = "big", Fill = "full" }], problems, received: true);

        Assert.Equal(["/containers/1/containerVolume", "/containers/1/fillPercent"], problems.Select(p => p.Field));
    }

    [Fact]
    public void Read_AnnouncedOnly_SaysNothingOfItsCondition()
    {
        var read = ContainerRow.Read([new() { Temperature = "4", Intact = "no", Leaking = true }], [], received: false);

        Assert.Equal((null, null, false), (read[0].Temperature, read[0].SealIntact, read[0].Leaking));
    }

    [Fact]
    public void Departures_LowFill_IsNamed() =>
        Assert.Contains("60 % full", Assert.Single(ContainerRow.Departures([new() { Fill = "60" }])), StringComparison.Ordinal);
}
