using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Bench;

public sealed class ReadResultsTests
{
    private static readonly ReadResults.Wanted All = new(null, null, null, null, null);

    private static async Task<ReadResults> FillAsync(TestLaboratory laboratory)
    {
        var scene = await Scene.Create(laboratory);
        await laboratory.Add(new LaboratorySettings { Name = "Test", TimeZone = "Europe/Amsterdam" }, new Tank { Code = "T-1", Name = "Tank 1" });
        for (var i = 0; i < 6; i++)
        {
            // Two at a time are recorded at one moment, so that pages end inside a tie.
            if (i % 2 == 0)
                laboratory.Clock.Advance(TimeSpan.FromHours(12));
            var sample = scene.NewSample(i < 3 ? scene.Batch.Id : null);
            sample.TankCode = i < 3 ? "T-1" : null;
            await laboratory.Add(sample, scene.NewDetermination(sample));
        }

        return new ReadResults(laboratory.Open);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_PageByPage_GivesEachOnce(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var read = await FillAsync(laboratory);
        var found = new List<Guid>();
        ReadResults.Place? after = null;

        do
        {
            var page = await read.Run(All, after, 3, TestContext.Current.CancellationToken);
            found.AddRange(page.Lines.Select(l => l.Determination));
            after = page.Next;
        }
        while (after is not null);

        var whole = await read.Run(All, null, TestContext.Current.CancellationToken);
        Assert.Equal(7, found.Distinct().Count());
        Assert.Equal(whole.Lines.Select(l => l.Determination), found);
        Assert.Null(whole.Next);
    }

    // The clock starts at 2026-05-04 08:00 UTC; twelve hours on it is 22:00 in Amsterdam, and 10:00 the next day.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Run_Narrowed_GivesWhatFits(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var read = await FillAsync(laboratory);

        async Task<int> CountAsync(ReadResults.Wanted wanted) => (await read.Run(wanted, null, TestContext.Current.CancellationToken)).Lines.Count;

        Assert.Equal(3, await CountAsync(All with { Tank = "T-1" }));
        Assert.Equal(7, await CountAsync(All with { Grade = Scene.GradeCode, Quantity = "DVPE" }));
        Assert.Equal(0, await CountAsync(All with { Quantity = "RVP" }));
        Assert.Equal(3, await CountAsync(All with { Until = Day(2026, 5, 4) }));
        Assert.Equal(4, await CountAsync(All with { From = Day(2026, 5, 5), Until = Day(2026, 5, 5) }));
    }

    private static ReadResults.Bound Day(int year, int month, int day) => new(new DateOnly(year, month, day), null);
}
