using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Methods;

/// <summary>Reference data is drafted by one person and approved by another, and counts only then.</summary>
public sealed class ReferenceDataTests
{
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Precision_ApprovedByItsDrafter_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var keep = new KeepPrecision(lab.Open, lab.Lab.Clock);
        var draft = Done(await keep.Draft(lab.Manager, NewPrecision(1.5m), TestContext.Current.CancellationToken));

        var own = await keep.Approve(lab.Manager, draft, TestContext.Current.CancellationToken);
        var other = await keep.Approve(lab.SecondManager, draft, TestContext.Current.CancellationToken);
        var twice = await keep.Approve(lab.SecondManager, draft, TestContext.Current.CancellationToken);

        Assert.Equal([KeepPrecision.Rule], Rules(own));
        Assert.Equal([AnswerKind.Refused, AnswerKind.Done, AnswerKind.Conflict], [own.Kind, other.Kind, twice.Kind]);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Precision_Drafted_DoesNotCountYet(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch();

        Done(await new KeepPrecision(lab.Open, lab.Lab.Clock).Draft(lab.Manager, NewPrecision(1.5m), TestContext.Current.CancellationToken));

        Assert.Null((await lab.OnlyLimit(batch, "EN228-A/DVPE")).Reproducibility);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Precision_ApprovedAnew_TakesThePlaceOfTheEarlier(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.Precision(1.5m, 3.0m);
        var batch = await lab.MeasuredBatch();

        await lab.Precision(1.4m, 2.9m);

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");
        Assert.Equal((1.4m, 2.9m), (limit.Repeatability, limit.Reproducibility));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Precision_OutsideWhatAPressureCanBe_IsInvalid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var keep = new KeepPrecision(lab.Open, lab.Lab.Clock);
        foreach (var (low, high, field) in new (decimal?, decimal?, string)[] { (-1m, 100m, "/low"), (10m, 3501m, "/high"), (80m, 20m, "/high") })
        {
            var entry = new PrecisionEntry { Method = En, Edition = "2024", Quantity = "DVPE", LowKpa = low, HighKpa = high, RepeatabilityConstant = 1m, Source = "own copy" };

            var answer = await keep.Draft(lab.Manager, entry, TestContext.Current.CancellationToken);

            Assert.Equal((AnswerKind.Invalid, field), (answer.Kind, answer.Problems[0].Field));
        }
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Limit_ApprovedByItsDrafter_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var keep = new KeepLimit(lab.Open, lab.Lab.Clock);
        var draft = Done(await keep.Draft(lab.Manager, NewLimit("contract 7", "EN228-A", 58.0m), TestContext.Current.CancellationToken));

        var own = await keep.Approve(lab.Manager, draft, TestContext.Current.CancellationToken);

        Assert.Equal((AnswerKind.Refused, KeepPrecision.Rule), (own.Kind, Assert.Single(Rules(own))));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Area_ApprovedByItsDrafter_IsRefused(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var keep = new KeepArea(lab.Open, lab.Lab.Clock);
        var draft = Done(await keep.Draft(lab.Manager, NewArea("NORTH", ("summer", 5, 1, 9, 30, "EN228-A")), TestContext.Current.CancellationToken));

        var own = await keep.Approve(lab.Manager, draft, TestContext.Current.CancellationToken);

        Assert.Equal((AnswerKind.Refused, KeepPrecision.Rule), (own.Kind, Assert.Single(Rules(own))));
    }

    private static PrecisionEntry NewPrecision(decimal r) =>
        new() { Method = En, Edition = "2024", Quantity = "DVPE", RepeatabilityConstant = r, ReproducibilityConstant = 2 * r, Source = "own copy" };
}
