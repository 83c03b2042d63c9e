using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Batches;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;
using static LabVolatility.Laboratory.Tests.Batches.GasolineLab;

namespace LabVolatility.Laboratory.Tests.Bench;

/// <summary>ASTM D6378 and EN 13016-3 from the fields of the bench to the certificate.</summary>
public sealed class TripleExpansionAtTheBenchTests
{
    private const string D6378 = "ASTM D6378";
    private const string En3 = "EN 13016-3";
    private const string Expander = "VP-3";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    // 60.9 − 2.7 = 58.2, − 1.005 for 1 L = 57.195 kPa: within class A of ASTM D4814, whose maximum is 62 kPa.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_GasAsGiven_GoesFromTheBenchToTheCertificate(StorageEngine engine)
    {
        await using var lab = await Create(engine, American, D6378, Authority.Astm);
        var batch = await lab.Batch(American, "D4814-A");
        var sample = await lab.Sample(batch, grade: American);

        var reported = Done(await Report(lab, sample, D6378, Given));

        Assert.Equal(["Ptot 60.9", "Pgas 2.7", "VP4 58.2", "DVPE 57.2"], reported.Evaluated.Results.Select(r => $"{r.Quantity} {r.Reported}"));
        var limit = await lab.OnlyLimit(batch, "D4814-A/DVPE");
        Assert.Equal((Outcome.Conforms, 57.195m, "57"), (limit.Outcome, limit.Value, limit.Compared));
        Assert.Contains(limit.Arithmetic, step => step.Label == "Vapour pressure");
        var kept = (await lab.Assess(batch)).Evidence.Samples.Single().Determinations.Single();
        Assert.Equal((3, 1, true), (kept.Handling.RinseCycles, kept.Handling.ConsecutiveDeterminations, kept.Handling.AtEquilibrium));
        Assert.Equal("20", kept.Readings.IntroductionTemperature!.Typed);
        Done(await lab.Sign(lab.Chemist, batch));
        var issued = Done(await new IssueCertificate(lab.Open, lab.Lab.Clock).Run(lab.Chemist, batch, Cancel));
        var certificate = await lab.Read(db => db.Certificates.AsNoTracking().FirstAsync(c => c.Number == issued.Number, Cancel));
        Assert.Contains("ASTM D6378-22, predicted DVPE", certificate.Content, StringComparison.Ordinal);
        await AssertReplays(lab, 4);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_ThreeExpansions_AreWorkedOutAndReplayed(StorageEngine engine)
    {
        await using var lab = await Create(engine, American, D6378, Authority.Astm);
        var sample = await lab.Sample(null, grade: American);

        var reported = Done(await Report(lab, sample, D6378, Expanded));

        var stored = await new ReadSample(lab.Open, lab.Lab.Clock).Run(sample, Cancel);
        var gas = stored!.Determinations.Single().ResultFor("Pgas", null)!;
        Assert.Equal("2.7", gas.Reported);
        Assert.StartsWith("2.676731", gas.Exact, StringComparison.Ordinal);
        Assert.Equal("58.2", reported.Evaluated.Results.Single(r => r.Quantity == "VP4").Reported);
        Assert.Equal(["1,8", "2.6 mL", "5"], stored.Determinations.Single().Current.Readings.Expansions.Select(e => e.Volume.Typed));
        await AssertReplays(lab, 4);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_NoPhysicalSolution_IsRefusedLikeTheMethodDoes(StorageEngine engine)
    {
        await using var lab = await Create(engine, American, D6378, Authority.Astm);
        var sample = await lab.Sample(null, grade: American);

        var answer = await Report(lab, sample, D6378, Expanded with { Expansions = [new("1.8", "57.0"), new("2.6", "57.5"), new("5", "58.0")] });

        Assert.Equal((AnswerKind.Refused, FindingCodes.GasPressureImplausible), (answer.Kind, answer.Problems.Single().Rule));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_SettingsNotTyped_AreAskedForAllAtOnce(StorageEngine engine)
    {
        await using var lab = await Create(engine, American, D6378, Authority.Astm);
        var sample = await lab.Sample(null, grade: American);

        var answer = await Report(lab, sample, D6378, new BenchEntry { TotalPressure = "60.9", Temperature = "37.8" });

        Assert.Equal(
            [
                "/handling/atEquilibrium", "/handling/confirmed/F-23", "/handling/confirmed/F-24", "/handling/confirmed/closed", "/handling/consecutiveDeterminations",
                "/handling/hazy", "/handling/rinseCycles", "/readings/gasPressure", "/readings/introductionTemperature",
            ],
            answer.Problems.Select(p => p.Field).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_EuropeanWithoutCorrelation_LeavesTheLimitOpen(StorageEngine engine)
    {
        await using var lab = await Create(engine, European, En3, Authority.En);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);

        var reported = Done(await Report(lab, sample, En3, Given));

        Assert.Equal(["Ptot", "Pgas", "VP4"], reported.Evaluated.Results.Select(r => r.Quantity));
        Assert.Contains(reported.Evaluated.Findings, f => f.Code == FindingCodes.NoCorrelation);
        Assert.Equal(Outcome.Incomplete, (await lab.OnlyLimit(batch, "EN228-A/DVPE")).Outcome);
        await AssertReplays(lab, 3);
    }

    // 0.98 · 60.9 − 0.9 · 2.7 + 0.3 = 57.552, worked by hand.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_EuropeanWithOwnCorrelation_AnswersTheLimitForEver(StorageEngine engine)
    {
        await using var lab = await Create(engine, European, En3, Authority.En);
        var correlation = await OwnCorrelation(lab);
        var batch = await lab.Batch();
        var sample = await lab.Sample(batch);
        var determination = Done(await Report(lab, sample, En3, Given)).Id;
        Done(await new KeepCorrelation(lab.Open, lab.Lab.Clock).Withdraw(lab.Manager, correlation, "a misprint in the copy", Cancel));

        var limit = await lab.OnlyLimit(batch, "EN228-A/DVPE");
        Assert.Equal((Outcome.Conforms, 57.552m), (limit.Outcome, limit.Value));
        var amended = await new AmendDetermination(lab.Open, lab.Lab.Clock).Run(
            lab.Analyst, new(Guid.NewGuid(), determination, 1, Read(Given with { TotalPressure = "61.0" }).Readings, null, false, null, "misread"), Cancel);
        Done(amended);

        Assert.Equal(57.65m, (await lab.OnlyLimit(batch, "EN228-A/DVPE")).Value);
        await AssertReplays(lab, 8);
    }

    // The gas part is taken off before the two are held against each other.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Report_DuplicateBeyondR_IsSaid(StorageEngine engine)
    {
        await using var lab = await Create(engine, American, D6378, Authority.Astm, duplicate: true);
        await lab.Precision(method: D6378);
        var sample = await lab.Sample(null, 5, grade: American);
        Done(await Report(lab, sample, D6378, Given));
        Done(await Report(lab, sample, D6378, Given with { ContainerNumber = 2, TotalPressure = "63.0", GasPressure = "3.2" }));

        var test = await lab.Test(sample, D6378);

        Assert.Contains("The two results differ by 1.6; r is 1.5.", test.Why, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Correlation_ApprovedByItsDrafter_IsRefused(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);
        var keep = new KeepCorrelation(lab.Open, lab.Lab.Clock);
        var draft = Done(await keep.Draft(lab.Manager, NewCorrelation(), Cancel));

        Assert.Equal([KeepPrecision.Rule], Rules(await keep.Approve(lab.Manager, draft, Cancel)));
        Assert.Equal(AnswerKind.Forbidden, (await keep.Approve(lab.Analyst, draft, Cancel)).Kind);
        Assert.Equal(AnswerKind.Done, (await keep.Approve(lab.SecondManager, draft, Cancel)).Kind);
        Assert.Equal(AnswerKind.Conflict, (await keep.Approve(lab.SecondManager, draft, Cancel)).Kind);
        Assert.Equal(AnswerKind.Invalid, (await keep.Withdraw(lab.Manager, draft, " ", Cancel)).Kind);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Correlation_WithFaults_NamesThemAll(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);

        var answer = await new KeepCorrelation(lab.Open, lab.Lab.Clock).Draft(
            lab.Manager, NewCorrelation(D6378, 0m, 3m, 0.123456789m, new DateOnly(2026, 1, 1), new DateOnly(2025, 1, 1), " "), Cancel);

        Assert.Equal(["/a", "/b", "/c", "/method", "/source", "/until"], answer.Problems.Select(p => p.Field).Order(StringComparer.Ordinal));
    }

    // Its first and last day belong to it; the one that begins later goes before.
    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Correlation_OnADay_IsTheLatestInForce(StorageEngine engine)
    {
        await using var lab = await GasolineLab.Create(engine);
        await OwnCorrelation(lab, NewCorrelation(until: new DateOnly(2026, 5, 4)));
        await OwnCorrelation(lab, NewCorrelation(from: new DateOnly(2026, 5, 4)));
        _ = TestMethods.TryFind(En3, out var method);

        async Task<string?> On(int month, int day) => (await lab.Read(db => OwnCorrelations.OnAsync(db, method, new DateOnly(2026, month, day), Cancel)))?.Version;

        Assert.Null(await On(3, 31));
        Assert.Equal("EN 13016-3:2025, own no. 1", await On(4, 1));
        Assert.Equal("EN 13016-3:2025, own no. 2", await On(5, 4));
    }

    private static BenchEntry Given => new()
    {
        ContainerNumber = 1,
        TotalPressure = "60,9",
        GasPressure = "2.7 kPa",
        Temperature = "37.8",
        VaporLiquidRatio = "4.00",
        IntroductionTemperature = "20",
        RinseCycles = "3",
        ConsecutiveDeterminations = "1",
        AtEquilibrium = true,
    };

    // The pressures of the worked check, read to 0.1 kPa: a gas part of 2.5235 kPa at 20 °C, 2.6767 kPa at 37.8 °C.
    private static BenchEntry Expanded => Given with
    {
        Expands = true,
        LiquidVolume = "1 mL",
        Expansions = [new("1,8", "65.3"), new("2.6 mL", "60.8"), new("5", "57.5")],
    };

    private static async Task<GasolineLab> Create(StorageEngine engine, string grade, string method, Authority authority, bool duplicate = false)
    {
        var lab = await GasolineLab.Create(engine, g => g.Tests = g.Code == grade ? [new GradeTest(method, [authority], duplicate, 4)] : g.Tests);
        var expander = NewInstrument(Expander);
        expander.Methods = [D6378, En3];
        await lab.Lab.Add(expander, lab.NewVerification(Expander));
        return lab;
    }

    private static CorrelationEntry NewCorrelation(
        string method = En3, decimal a = 0.98m, decimal b = -0.9m, decimal c = 0.3m, DateOnly? from = null, DateOnly? until = null, string source = "figures made up for a test") => new()
        {
            Method = method,
            TotalSlope = a,
            GasSlope = b,
            Constant = c,
            Unit = PressureUnit.Kilopascal,
            From = from ?? new DateOnly(2026, 4, 1),
            Until = until,
            Source = source,
        };

    private static async Task<Guid> OwnCorrelation(GasolineLab lab, CorrelationEntry? entry = null)
    {
        var keep = new KeepCorrelation(lab.Open, lab.Lab.Clock);
        return Done(await keep.Approve(lab.SecondManager, Done(await keep.Draft(lab.Manager, entry ?? NewCorrelation(), Cancel)), Cancel));
    }

    private static (ReadingsAsTyped Readings, HandlingAsTyped Handling) Read(BenchEntry entry)
    {
        var (readings, handling, problems) = BenchReading.Read(entry);
        Assert.Empty(problems);
        return (readings, handling);
    }

    private static Task<Answer<ReportedDetermination>> Report(GasolineLab lab, string sample, string designation, BenchEntry entry)
    {
        _ = TestMethods.TryFind(designation, out var method);
        var confirmed = entry.RinseCycles is null
            ? entry
            : entry with { Confirmed = [.. HandlingConfirmed.Codes(method!).Append("haze").Select(code => new ConfirmedStep(code, lab.Now))] };
        var (readings, handling) = Read(confirmed);
        return lab.Report(lab.Analyst, new DeterminationRequest
        {
            SampleNumber = sample,
            Method = designation,
            ContainerNumber = entry.ContainerNumber ?? 1,
            Instrument = Expander,
            MeasuredBy = "ida.berg",
            Readings = readings,
            Handling = handling,
        });
    }

    private static async Task AssertReplays(GasolineLab lab, int results)
    {
        var replayed = await new Replay(lab.Open).Run(Cancel);

        Assert.Empty(replayed.Differences);
        Assert.Equal(results, replayed.Results);
    }
}
