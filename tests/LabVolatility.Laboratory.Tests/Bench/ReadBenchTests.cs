using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Bench;

public sealed class ReadBenchTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadBench_DuplicateDue_CountsWhatIsMadeAndOffered(StorageEngine engine)
    {
        await using var lab = await Create(engine, g => g.Tests = [g.Tests[0] with { Duplicate = true }]);
        var number = await lab.Sample(null);
        await lab.Measure(number, "65.0");

        var day = await new ReadBench(lab.Open, lab.Lab.Clock).Run(lab.Analyst.Id, Cancel);

        var waiting = Assert.Single(day.Waiting);
        Assert.Equal((1, 2, 0), (waiting.Made, waiting.Wanted, waiting.ToTakeOn));
        Assert.Equal(1, waiting.Offered);
        Assert.True(Assert.Single(day.Instruments).Readiness.Ready);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadBench_SentWithoutOperator_WaitsForAPerson(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var number = await lab.Sample(null);
        Done(await lab.Report(lab.Key, lab.NewDetermination(number, "65.0") with { MeasuredBy = null }));

        var day = await new ReadBench(lab.Open, lab.Lab.Clock).Run(lab.Analyst.Id, Cancel);

        Assert.Equal("65.0 kPa", Assert.Single(day.TakeOn).Reading);
        Assert.Equal((0, 1), (day.Waiting[0].Made, day.Waiting[0].ToTakeOn));
        Done(await new TakeOnDetermination(lab.Open, lab.Lab.Clock).Run(lab.Analyst, day.TakeOn[0].Id, Cancel));
        Assert.Empty((await new ReadBench(lab.Open, lab.Lab.Clock).Run(lab.Analyst.Id, Cancel)).TakeOn);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadBenchTest_DraftsOfTwoPeople_AreKeptApart(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var number = await lab.Sample(null);
        var test = await lab.Test(number);
        var save = new SaveDraft(lab.Open, lab.Lab.Clock);
        var typed = new BenchEntry { ContainerNumber = 2, TotalPressure = "62,1", Confirmed = [new ConfirmedStep("inject", lab.Now)] };
        Done(await save.Run(lab.Analyst, test.Id, typed, Cancel));
        Done(await save.Run(lab.SecondAnalyst, test.Id, new BenchEntry { TotalPressure = "70" }, Cancel));

        var read = await new ReadBenchTest(lab.Open, lab.Lab.Clock).Run(lab.Analyst.Id, number, En, cancel: Cancel);

        Assert.NotNull(read);
        Assert.Equal(("62,1", 2), (read.Draft!.TotalPressure, read.Draft.ContainerNumber));
        Assert.Equal("inject", Assert.Single(read.Draft.Confirmed).Code);
        Assert.Equal("Nils Ek", Assert.Single(read.OtherDrafts).Name);
        Assert.Equal("ida.berg", read.UserName);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task BenchPreview_SameReadings_GivesWhatIsReported(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision();
        var number = await lab.Sample(null);
        var test = (await new ReadBenchTest(lab.Open, lab.Lab.Clock).Run(lab.Analyst.Id, number, En, withNext: true, Cancel))!;
        var entry = new BenchEntry { ContainerNumber = 1, TotalPressure = "65,0", Temperature = "37.8", ChilledTo = "0.5", AirSaturated = true };

        var preview = BenchPreview.Of(test, entry);
        var reported = Done(await lab.Report(lab.Analyst, lab.NewDetermination(number, "65.0")));

        Assert.Null(test.Next);
        Assert.Equal(reported.Evaluated.Results.Select(r => (r.Quantity, r.Reported, r.Value)), preview.Evaluated!.Results.Select(r => (r.Quantity, r.Reported, r.Value)));
        Assert.Equal("r 1.50 kPa · R 3.00 kPa", Assert.Single(preview.Precision).Text);
        Assert.Contains(BenchPreview.Of(test, entry with { FillPercent = "65" }).Evaluated!.Blocking, f => f.Code == "fill-level");
        Assert.Equal("r not set by the laboratory · R not set by the laboratory", BenchPreview.Of(test, entry with { Hazy = true }).Precision[0].Text);
        Assert.Null(BenchPreview.Of(test, entry with { ContainerNumber = null }).Evaluated);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadBenchTest_CancelledOrUnknown_IsNothing(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var number = await lab.Sample(null);
        Done(await new CancelTest(lab.Open).Run(lab.Chemist, (await lab.Test(number)).Id, "not needed", Cancel));
        var read = new ReadBenchTest(lab.Open, lab.Lab.Clock);

        Assert.Null(await read.Run(lab.Analyst.Id, number, En, cancel: Cancel));
        Assert.Null(await read.Run(lab.Analyst.Id, number, "no such method", cancel: Cancel));
    }
}
