using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>Levels that disagree are not averaged: the worst one governs. DVPE = 0.965 · ASVP − 3.78 kPa; r = 1.5 kPa.</summary>
public sealed class LevelTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Levels_Agree_AreAveraged(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await Levels(lab, "65.0", "65.5", "66.0");

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        Assert.Equal((3, 59.4275m, Outcome.Conforms), (limit.Count, limit.Value, limit.Outcome));
        Assert.True(Assert.Single((await lab.Assess(batch)).Evidence.Levels).Agree);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Levels_DisagreeAtTheMaximum_TheHighestGoverns(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await Levels(lab, "67.0", "64.0", "63.0");

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        Assert.Equal((1, 60.875m, Outcome.DoesNotConform), (limit.Count, limit.Value, limit.Outcome));
        Assert.False(Assert.Single((await lab.Assess(batch)).Evidence.Levels).Agree);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Levels_DisagreeAtTheMinimum_TheLowestGoverns(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await Levels(lab, "53.0", "52.0", "50.0");

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        Assert.Equal((1, 44.47m, Outcome.DoesNotConform), (limit.Count, limit.Value, limit.Outcome));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Levels_PrecisionNotSet_TheWorstGoverns(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await Levels(lab, "65.0", "66.1", "64.0");

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        Assert.Equal((1, 60.0065m), (limit.Count, limit.Value));
        Assert.Null(Assert.Single((await lab.Assess(batch)).Evidence.Levels).Agree);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task SecondSample_OfTheSameLevel_DoesNotHideTheFirst(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var batch = await lab.MeasuredBatch("67.0");
        await lab.Measure(await lab.Sample(batch), "64.0");

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        Assert.Equal((1, Outcome.DoesNotConform), (limit.Count, limit.Outcome));
    }

    private static async Task<string> Levels(GasolineLab lab, string upper, string middle, string lower)
    {
        var batch = await lab.Batch();
        foreach (var (level, total) in new[] { (SampleLevel.Upper, upper), (SampleLevel.Middle, middle), (SampleLevel.Lower, lower) })
            await lab.Measure(await lab.Sample(batch, level: level), total);
        return batch;
    }
}
