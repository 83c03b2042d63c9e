using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>Results held against the limits that were picked: order of the arithmetic, correlation, places, seasons, ethanol.</summary>
public sealed class AssessmentTests
{
    // 0.956 · 9.83 − 0.347 = 9.05048 psi (40 CFR 1090.1355(a), worked by hand): rounded once 9.1; by way of 9.05 it would be 9.0.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task DoubleRoundingTrap_IsRoundedOnce(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("9.83 psi", American, "US-9.0");

        var limit = await lab.OnlyLimit(batch, "US-9.0/RVP");

        Assert.Equal((9.05048m, "9.1", Outcome.DoesNotConform), (limit.Value, limit.Compared, limit.Outcome));
    }

    // 9.82 psi gives 9.04092 psi.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task JustBelowTheTrap_Conforms(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("9.82 psi", American, "US-9.0");

        var limit = await lab.OnlyLimit(batch, "US-9.0/RVP");

        Assert.Equal((9.04092m, "9.0", Outcome.Conforms), (limit.Value, limit.Compared, limit.Outcome));
    }

    // A reading in kPa goes to the limit's psi first, then through the constants printed in psi; never through those in kPa.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ReadingInKilopascal_GoesToTheLimitsUnitFirst(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("67.80", American, "US-9.0");

        var limit = await lab.OnlyLimit(batch, "US-9.0/RVP");

        var psi = AbsolutePressure.From(67.80m, PressureUnit.Kilopascal).In(PressureUnit.Psi);
        Assert.Equal(Rounding.ToPlaces((0.956m * psi) - 0.347m, 15), Rounding.ToPlaces(limit.Value!.Value, 15));
        Assert.Equal(["Reading", "Unit", "Correlation", "Rounding"], limit.Arithmetic.Take(4).Select(s => s.Label));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task EpaLimit_OnlyDvpeReported_StaysIncomplete(StorageEngine engine)
    {
        await using var lab = await Create(engine, grade => grade.Tests = [new GradeTest(Astm, [Authority.Astm], false, 4)]);
        var batch = await lab.MeasuredBatch("8.0 psi", American, "US-9.0");

        var limit = await lab.OnlyLimit(batch, "US-9.0/RVP");

        Assert.Equal(Outcome.Incomplete, limit.Outcome);
        Assert.Contains("DVPE (ASTM D5191) does not answer it", limit.OutcomeWhy, StringComparison.Ordinal);
    }

    public static MatrixTheoryData<StorageEngine, DecisionRule, string> Verdicts => new(
        [StorageEngine.Sqlite, StorageEngine.Postgres], [DecisionRule.Simple, DecisionRule.Guarded], ["63.0", "64.3", "65.0", "66.1", "66.2", "69.0"]);

    [Theory, MemberData(nameof(Verdicts))]
    public async Task Verdict_IsTheCoresOwn(StorageEngine engine, DecisionRule rule, string total)
    {
        await using var lab = await Create(engine, grade => grade.Rule = rule);
        await lab.Precision();
        var batch = await lab.MeasuredBatch(total);
        var value = (0.965m * decimal.Parse(total, System.Globalization.CultureInfo.InvariantCulture)) - 3.78m;

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        var core = Conformity.Judge(new LimitInput
        {
            Value = value, Minimum = 45.0m, Maximum = 60.0m, Digits = 1, Unit = "kPa", Rule = rule, Repeatability = 1.5m, Reproducibility = 3.0m,
        });
        Assert.Equal(
            (core.Outcome, core.Compared, core.Margin, core.ProbabilityBeyond, core.ResultsToDecide, core.AcceptanceMaximum),
            (limit.Outcome, limit.Compared, limit.Margin, limit.ProbabilityBeyond, limit.ResultsToDecide, limit.AcceptanceMaximum));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Guarded_WithoutPrecision_IsNotDecidedAndSaysWhy(StorageEngine engine)
    {
        await using var lab = await Create(engine, grade => grade.Rule = DecisionRule.Guarded);
        await lab.Precision(edition: "2007");
        var batch = await lab.MeasuredBatch();

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        Assert.Equal(Outcome.NotDecided, limit.Outcome);
        Assert.Contains("edition 2007 doesn't fill in for it", limit.OutcomeWhy, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Guarded_HazySample_IsNotDecided(StorageEngine engine)
    {
        await using var lab = await Create(engine, grade => grade.Rule = DecisionRule.Guarded);
        await lab.Precision();
        var batch = await lab.Batch();
        await lab.Measure(await lab.Sample(batch), "60.0", hazy: true);

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");

        Assert.Equal(Outcome.NotDecided, limit.Outcome);
        Assert.Contains("hazy", limit.OutcomeWhy, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Destinations_EachIsJudged(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("67.0", change: b => b with { Destinations = [To("EN228-A"), To("EN228-B")] });

        var evidence = (await lab.Assess(batch)).Evidence;

        // 0.965 · 67.0 − 3.78 = 60.875 kPa: beyond A's 60.0, within B's 70.0.
        Assert.Equal(
            [("EN228-A/DVPE", Outcome.DoesNotConform), ("EN228-B/DVPE", Outcome.Conforms)],
            evidence.Limits.Where(l => l.Quantity == "DVPE").Select(l => (l.Key, l.Outcome)));
        Assert.Equal(Outcome.DoesNotConform, evidence.Outcome);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Destinations_NothingMeetsBoth_IsSaid(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("67.0", change: b => b with { Destinations = [To("EN228-A"), To("EN228-F")] });

        var evidence = (await lab.Assess(batch)).Evidence;

        Assert.Contains(evidence.Remarks, r => r.Contains("split the destinations", StringComparison.Ordinal));
        Assert.Equal(Outcome.DoesNotConform, evidence.Outcome);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Period_AcrossAChangeOfSeason_IsHeldAgainstBothClasses(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnArea("NORTH", ("summer", 5, 1, 9, 30, "EN228-A"), ("winter", 10, 1, 4, 30, "EN228-D"));
        var batch = await lab.MeasuredBatch("65.0", area: "NORTH", change: b => b with { From = new DateOnly(2026, 9, 25), Until = new DateOnly(2026, 10, 5) });

        var limits = (await lab.Assess(batch)).Evidence.Limits.Where(l => l.Quantity == "DVPE").ToList();

        Assert.Equal(["EN228-A/DVPE", "EN228-D/DVPE"], limits.Select(l => l.Key));
        Assert.Contains("Used from 2026-09-25 until 2026-09-30", limits[0].Why, StringComparison.Ordinal);
        Assert.Contains("Used from 2026-10-01 until 2026-10-05", limits[1].Why, StringComparison.Ordinal);
        Assert.Equal([Outcome.Conforms, Outcome.DoesNotConform], limits.Select(l => l.Outcome));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Period_OutsideTheSeason_NamesTheDaysWithoutALimit(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("8.0 psi", American, "US-9.0", b => b with { From = new DateOnly(2026, 9, 10), Until = new DateOnly(2027, 5, 2) });

        var evidence = (await lab.Assess(batch)).Evidence;

        Assert.Contains("no limit is in force from 2026-09-16 until 2027-04-30.", Assert.Single(evidence.Remarks), StringComparison.Ordinal);
        Assert.Contains(
            "from 2026-09-10 until 2026-09-15 and from 2027-05-01 until 2027-05-02", evidence.Limits[0].Why, StringComparison.Ordinal);
    }

    // 40 CFR 1090.215(b): 1.0 psi for 9 to 10 % ethanol. 0.956 · 10.8 − 0.347 = 9.9778 psi.
    public static MatrixTheoryData<StorageEngine, string> EthanolCases =>
        new([StorageEngine.Sqlite, StorageEngine.Postgres], ["measured", "not measured", "blank method", "outside", "blendstock"]);

    [Theory, MemberData(nameof(EthanolCases))]
    public async Task EthanolAllowance_NeedsAMeasuredContentInsideTheWindow(StorageEngine engine, string what)
    {
        await using var lab = await Create(engine);
        var batch = await lab.MeasuredBatch("10.80 psi", American, "US-9.0", b => b with
        {
            EthanolPercent = what == "outside" ? 8.9m : 9.8m,
            EthanolMethod = what switch { "not measured" => null, "blank method" => " ", _ => "ASTM D4815" },
            State = what == "blendstock" ? ProductState.Blendstock : ProductState.Finished,
        });

        var limit = await lab.OnlyLimit(batch, "US-9.0/RVP");

        Assert.Equal(
            what == "measured" ? (10.0m, 1.0m, Outcome.Conforms) : (9.0m, null, Outcome.DoesNotConform),
            (limit.EffectiveMaximum, limit.Allowance, limit.Outcome));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task ContractLimit_InAnOwnArea_HoldsOnTopOfTheClass(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnArea("NORTH", ("summer", 5, 1, 9, 30, "EN228-A"));
        await lab.OwnLimit("contract 7", "NORTH", maximum: 58.0m);
        var batch = await lab.MeasuredBatch("65.0", area: "NORTH");

        var limits = (await lab.Assess(batch)).Evidence.Limits.Where(l => l.Quantity == "DVPE").ToList();

        Assert.Equal(
            [("EN228-A/DVPE", Standing.Legal, Outcome.Conforms), ("contract 7", Standing.Contract, Outcome.DoesNotConform)],
            limits.Select(l => (l.Key, l.Standing, l.Outcome)));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task TwoMethods_MakeNoMean(StorageEngine engine)
    {
        await using var lab = await Create(engine);
        await lab.OwnLimit("contract 7", "EN228-A", maximum: 60.0m, methods: [En, Astm]);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        await lab.Measure(sample, "66.5");
        await lab.Measure(sample, "60.0", 2, method: Astm);

        var limit = await lab.OnlyLimit(batch, "contract 7");

        Assert.Equal((1, 60.3925m, Outcome.DoesNotConform), (limit.Count, limit.Value, limit.Outcome));
    }

    private static Destination To(string area) => new(area, PointOfCompliance.Terminal);
}
