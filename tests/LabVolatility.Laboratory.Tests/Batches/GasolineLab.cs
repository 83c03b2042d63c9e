using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Batches;

/// <summary>A gasoline laboratory at work: a person of each role, two grades, a tank, an instrument that is ready today.</summary>
/// <remarks>Figures of precision are made up: r = 1.5 kPa and R = 3.0 kPa, as in the worked examples of the decision rules.</remarks>
internal sealed class GasolineLab : IAsyncDisposable
{
    public const string European = "gasoline-95";
    public const string American = "regular-87";
    public const string Tank = "T-101";
    public const string Tester = "VP-1";
    public const string En = "EN 13016-1";
    public const string Astm = "ASTM D5191";
    private int _batches;

    private GasolineLab(TestLaboratory lab) => Lab = lab;

    public TestLaboratory Lab { get; }
    public Func<LabContext> Open => Lab.Open;
    public DateTimeOffset Now => Lab.Clock.GetUtcNow();
    public Actor Analyst { get; } = Person(1, "Ida Berg", Roles.Analyst);
    public Actor SecondAnalyst { get; } = Person(2, "Nils Ek", Roles.Analyst);
    public Actor Chemist { get; } = Person(3, "Tomas Lind", Roles.ShiftChemist);
    public Actor Engineer { get; } = Person(4, "Eva Holm", Roles.BlendingEngineer);
    public Actor Manager { get; } = Person(5, "Kari Moe", Roles.QualityManager);
    public Actor SecondManager { get; } = Person(6, "Olav Rud", Roles.QualityManager);
    public Actor Administrator { get; } = Person(7, "Per Dahl", Roles.Administrator);
    public Actor Auditor { get; } = Person(8, "Siri Lie", Roles.Auditor);

    /// <summary>An instrument's key, owned by the administrator.</summary>
    public Actor Key => Administrator with { Name = "Per Dahl (key VP-1)", Origin = "interface", IsKey = true };

    public IReadOnlyList<Actor> People =>
        [Analyst, SecondAnalyst, Chemist, Engineer, Manager, SecondManager, Administrator, Auditor];

    public static async Task<GasolineLab> Create(StorageEngine engine, Action<Grade>? change = null)
    {
        var lab = new GasolineLab(await TestLaboratory.Create(engine));
        Grade[] grades =
        [
            new() { Code = European, Name = "Gasoline 95", Tests = [new GradeTest(En, [Authority.En], false, 4)] },
            new() { Code = American, Name = "Regular 87", Tests = [new GradeTest(Astm, [Authority.Astm, Authority.Epa], false, 4)] },
        ];
        foreach (var grade in grades)
            change?.Invoke(grade);
        await lab.Lab.Add(
        [
            new LaboratorySettings { Name = "Fjordvik laboratory", TimeZone = "Europe/Oslo" },
            .. lab.People.Select(lab.PersonOf), .. grades,
            new Tank { Code = Tank, Name = "Tank 101" },
            new Tank { Code = "T-102", Name = "Tank 102" },
            NewInstrument(Tester),
            lab.NewVerification(Tester),
        ]);
        return lab;
    }

    /// <summary>A grade whose plan asks for a second container of every sample.</summary>
    public static void InDuplicate(Grade grade) => grade.Tests = [.. grade.Tests.Select(t => t with { Duplicate = true })];

    public ValueTask DisposeAsync() => Lab.DisposeAsync();

    /// <summary>r and R approved by two people, for the method's own edition unless another is named.</summary>
    public async Task<Guid> Precision(
        decimal? r = 1.5m, decimal? bigR = 3.0m, string method = En, string? edition = null, string quantity = "DVPE", PressureUnit unit = PressureUnit.Kilopascal)
    {
        var keep = new KeepPrecision(Open, Lab.Clock);
        _ = TestMethods.TryFind(method, out var known);
        var draft = Done(await keep.Draft(Manager, new PrecisionEntry
        {
            Method = method,
            Edition = edition ?? known!.Edition,
            Quantity = quantity,
            Unit = unit,
            RepeatabilityConstant = r,
            ReproducibilityConstant = bigR,
            Source = "figures made up for a test",
        }, Cancel));
        return Done(await keep.Approve(SecondManager, draft, Cancel));
    }

    /// <summary>A limit of the laboratory's own, drafted and approved.</summary>
    public async Task<Guid> OwnLimit(
        string key, string area, decimal? maximum = null, Standing standing = Standing.Contract, IReadOnlyList<string>? methods = null,
        DateOnly? from = null, DateOnly? until = null)
    {
        var keep = new KeepLimit(Open, Lab.Clock);
        var draft = Done(await keep.Draft(Manager, NewLimit(key, area, maximum, standing, methods, from, until), Cancel));
        return Done(await keep.Approve(SecondManager, draft, Cancel));
    }

    public static LaboratoryLimit NewLimit(
        string key, string area, decimal? maximum, Standing standing = Standing.Contract, IReadOnlyList<string>? methods = null,
        DateOnly? from = null, DateOnly? until = null) => new()
        {
            Key = key,
            AreaCode = area,
            Quantity = "DVPE",
            Maximum = maximum,
            Unit = "kPa",
            Digits = 1,
            Methods = methods ?? [En],
            Standing = standing,
            Source = "contract made up for a test",
            EffectiveFrom = from ?? new DateOnly(2026, 1, 1),
            EffectiveUntil = until,
        };

    /// <summary>An area of the laboratory's own with a calendar of classes, drafted and approved.</summary>
    public async Task<Guid> OwnArea(string code, params (string Season, int FromMonth, int FromDay, int UntilMonth, int UntilDay, string Class)[] windows)
    {
        var keep = new KeepArea(Open, Lab.Clock);
        var draft = Done(await keep.Draft(Manager, NewArea(code, windows), Cancel));
        return Done(await keep.Approve(SecondManager, draft, Cancel));
    }

    public static LaboratoryArea NewArea(
        string code, params (string Season, int FromMonth, int FromDay, int UntilMonth, int UntilDay, string Class)[] windows) => new()
        {
            Code = code,
            Name = $"Area {code}",
            Calendar = [.. windows.Select(w => new SeasonWindow(w.Season, new MonthDay(w.FromMonth, w.FromDay), new MonthDay(w.UntilMonth, w.UntilDay), null, w.Class))],
            Source = "calendar made up for a test",
            EffectiveFrom = new DateOnly(2026, 1, 1),
        };

    public async Task<string> Batch(string grade = European, string area = "EN228-A", Func<BatchRequest, BatchRequest>? change = null)
    {
        var request = NewBatch(grade, area);
        return Done(await new RegisterBatch(Open, Lab.Clock).Run(Chemist, change?.Invoke(request) ?? request, Cancel));
    }

    public BatchRequest NewBatch(string grade = European, string area = "EN228-A") => new()
    {
        Number = $"B-{++_batches}",
        Grade = grade,
        Tank = Tank,
        CubicMetres = 4250.50m,
        Destinations = [new Destination(area, PointOfCompliance.Terminal)],
        From = new DateOnly(2026, 5, 10),
        Until = new DateOnly(2026, 5, 20),
    };

    public SampleRequest NewSample(string? batch, int containers = 3, SampleLevel level = SampleLevel.Running, string grade = European) => new()
    {
        Grade = grade,
        Batch = batch,
        Level = level,
        SampledAt = Now.AddHours(-2),
        SampledBy = "Ola Vik",
        ReceivedAt = Now.AddHours(-1),
        Containers = [.. Enumerable.Repeat(new ContainerRequest(ContainerKind.GlassBottle, 1000m, 75m, "4.0", null, true), containers)],
    };

    public async Task<string> Sample(string? batch, int containers = 3, SampleLevel level = SampleLevel.Running, string grade = European) =>
        Done(await new RegisterSample(Open, Lab.Clock).Run(Analyst, NewSample(batch, containers, level, grade), Cancel));

    /// <summary>What the person at the bench sends.</summary>
    public DeterminationRequest NewDetermination(
        string sample, string total, int container = 1, Actor? by = null, string method = En, bool hazy = false)
    {
        _ = TestMethods.TryFind(method, out var known);
        var (readings, handling, problems) = BenchReading.Read(new BenchEntry
        {
            TotalPressure = total,
            Temperature = "37.8",
            ChilledTo = "0.5",
            AirSaturated = true,
            Hazy = hazy,
            Confirmed = [.. HandlingConfirmed.Codes(known!).Append("haze").Select(code => new ConfirmedStep(code, Now))],
        });
        Assert.Empty(problems);
        return new DeterminationRequest
        {
            SampleNumber = sample,
            Method = method,
            ContainerNumber = container,
            Instrument = Tester,
            MeasuredBy = UserName(by ?? Analyst),
            Readings = readings,
            Handling = handling,
        };
    }

    public Task<Answer<ReportedDetermination>> Report(Actor actor, DeterminationRequest request) =>
        new ReportDetermination(Open, Lab.Clock).Run(actor, request, Cancel);

    public async Task<Guid> Measure(
        string sample, string total, int container = 1, Actor? by = null, string method = En, bool hazy = false) =>
        Done(await Report(by ?? Analyst, NewDetermination(sample, total, container, by, method, hazy))).Id;

    /// <summary>A batch with one sample and one result, nothing decided.</summary>
    public async Task<string> MeasuredBatch(
        string total = "65.0", string grade = European, string area = "EN228-A", Func<BatchRequest, BatchRequest>? change = null)
    {
        var batch = await Batch(grade, area, change);
        await Measure(await Sample(batch, grade: grade), total, method: grade == European ? En : Astm);
        return batch;
    }

    public async Task<AssessBatch.Assessed> Assess(string batch)
    {
        var assessed = await new AssessBatch(Open).Run(batch, Cancel);
        Assert.NotNull(assessed);
        return assessed;
    }

    public async Task<LimitEvidence> OnlyLimit(string batch, string key) =>
        Assert.Single((await Assess(batch)).Evidence.Limits, l => l.Key == key);

    /// <summary>Looks at the batch as it is, then signs.</summary>
    public async Task<Answer<DecisionInForce>> Sign(
        Actor actor, string batch, DecisionKind kind = DecisionKind.Release, string? reason = null, Guid? command = null)
    {
        var seen = await Assess(batch);
        return await Sign(actor, new DecisionRequest(
            command ?? Guid.NewGuid(), batch, kind, seen.InForce?.Sequence ?? 0, seen.EvidenceHash,
            reason ?? (kind is DecisionKind.Release ? null : "as agreed"), "password"));
    }

    public Task<Answer<DecisionInForce>> Sign(Actor actor, DecisionRequest request) =>
        new Decide(Open, Lab.Clock, Yes.Only).Run(actor, request, Cancel);

    public async Task<string> ReleasedBatch(string total = "65.0")
    {
        var batch = await MeasuredBatch(total);
        Done(await Sign(Chemist, batch));
        return batch;
    }

    public Task<Answer<int>> Amend(
        Actor actor, Guid determination, string? total, int revision = 1, string? reason = "misread by one line", bool setAside = false,
        string? cause = null, Guid? command = null) =>
        new AmendDetermination(Open, Lab.Clock).Run(actor, new AmendDetermination.Request(
            command ?? Guid.NewGuid(), determination, revision,
            total is null ? null : NewDetermination("-", total).Readings, null, setAside, cause, reason), Cancel);

    public Task<Answer<bool>> Verify(Actor actor, bool inBand, string instrument = Tester, Guid? command = null) =>
        new RecordVerification(Open, Lab.Clock).Run(actor, new RecordVerification.Request(
            command ?? Guid.NewGuid(), instrument, "cyclopentane", "L-7", inBand ? "68.3" : "66.0", "67.9", "69.1", null, null), Cancel);

    public Task<Answer<Guid>> Move(Actor actor, DateTimeOffset at, MovementKind kind = MovementKind.Receipt, string tank = Tank, Guid? command = null) =>
        new RecordMovement(Open, Lab.Clock).Run(actor, new RecordMovement.Request(command ?? Guid.NewGuid(), tank, kind, at, 120m, null), Cancel);

    public async Task<T> Read<T>(Func<LabContext, Task<T>> question)
    {
        await using var context = Open();
        return await question(context);
    }

    public Task<AssignedTest> Test(string sample, string method = En) => Read(lab => lab.AssignedTests.AsNoTracking()
        .FirstAsync(t => t.Method == method && lab.Samples.Any(s => s.Id == t.SampleId && s.Number == sample), Cancel));

    public async Task<BatchSheet> Sheet(string batch)
    {
        var sheet = await new ReadBatch(Open, Lab.Clock).Run(batch, Cancel);
        Assert.NotNull(sheet);
        return sheet;
    }

    /// <summary>What comes next for the batch; fails where nothing does.</summary>
    public async Task<RetestAdvice> Next(string batch)
    {
        var next = (await Sheet(batch)).Next;
        Assert.NotNull(next);
        return next;
    }

    /// <summary>Takes the step that the tree asks for now.</summary>
    public async Task<Guid> Step(string batch) => Done(await Step(Chemist, TakeStepRequest.Of(batch, await Next(batch))));

    public Task<Answer<Guid>> Step(Actor actor, TakeStepRequest request) => new TakeStep(Open, Lab.Clock).Run(actor, request, Cancel);

    /// <summary>Opens one container after another, and takes a step of the tree wherever another one needs it.</summary>
    public async Task MeasureByTree(string batch, string sample, params string[] totals)
    {
        foreach (var (i, total) in totals.Index())
        {
            if ((await Test(sample)).State != TestState.Waiting)
                await Step(batch);
            await Measure(sample, total, i + 1);
        }
    }

    public Task<Answer<Guid>> EnterParty(string batch, string value, Func<PartyResultRequest, PartyResultRequest>? change = null, Actor? by = null)
    {
        var request = new PartyResultRequest
        {
            Batch = batch,
            Kind = PartyKind.Inspector,
            Party = "Fjord Inspection",
            Laboratory = "Fjord laboratory",
            Quantity = "DVPE",
            Method = En,
            Value = value,
            MeasuredOn = new DateOnly(2026, 5, 4),
        };
        return new EnterPartyResult(Open, Lab.Clock).Run(by ?? Chemist, change?.Invoke(request) ?? request, Cancel);
    }

    public static Instrument NewInstrument(string code) => new()
    {
        Code = code,
        Name = $"Tester {code}",
        Methods = [En, Astm],
        CalibratedOn = new DateOnly(2026, 1, 12),
        CalibrationDueOn = new DateOnly(2027, 1, 12),
        LowKpa = 7m,
        HighKpa = 130m,
    };

    public Verification NewVerification(string instrument, bool inBand = true) => new()
    {
        Id = Guid.CreateVersion7(Now),
        InstrumentCode = instrument,
        On = new DateOnly(2026, 5, 4),
        At = Now.AddHours(-3),
        By = Analyst.Id,
        Fluid = "cyclopentane",
        InBand = inBand,
    };

    public static T Done<T>(Answer<T> answer)
    {
        Assert.True(answer.Kind == AnswerKind.Done, $"{answer.Kind}: {answer.Text}");
        return answer.Value!;
    }

    /// <summary>On another thread, beside others.</summary>
    public static Task<T> AtOnce<T>(Func<Task<T>> act) => Task.Run(act, Cancel);

    /// <summary>The rules that stood against it, each once.</summary>
    public static IReadOnlyList<string> Rules<T>(Answer<T> answer) => [.. answer.Problems.Select(p => p.Rule).OfType<string>().Distinct()];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static Actor Person(int number, string name, Roles roles) =>
        new(new Guid($"00000000-0000-7000-8000-{number:000000000000}"), name, roles, "page");

    private static string UserName(Actor actor) => actor.Name.ToLowerInvariant().Replace(' ', '.');

    private Person PersonOf(Actor actor) => new()
    {
        Id = actor.Id,
        FullName = actor.Name,
        Roles = actor.Roles,
        UserName = UserName(actor),
        NormalizedUserName = UserName(actor).ToUpperInvariant(),
        SecurityStamp = actor.Id.ToString(),
        CreatedAt = Now,
    };

    /// <summary>A password that is always right.</summary>
    private sealed class Yes : ISignature
    {
        public static Yes Only { get; } = new();

        public Task<bool> IsRightAsync(Actor actor, string password, CancellationToken cancel) => Task.FromResult(true);
    }
}
