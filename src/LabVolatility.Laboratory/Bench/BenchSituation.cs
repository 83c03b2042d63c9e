using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>All that a determination meets at the bench: sample, container, instrument, person, method, day.</summary>
internal sealed class BenchSituation
{
    private static readonly TimeSpan ClockTolerance = TimeSpan.FromMinutes(5);
    private int _made;

    private BenchSituation(DeterminationRequest request, DateTimeOffset now) => (Request, Now) = (request, now);

    public DeterminationRequest Request { get; }
    public DateTimeOffset Now { get; }
    public Sample? Sample { get; private set; }
    public SampleKind Kind { get; private set; }
    public Container? Container { get; private set; }
    /// <summary>The assigned test; one is added where a method is measured that nobody assigned: every valid result counts.</summary>
    public AssignedTest Test { get; private set; } = null!;
    public TestMethod? Method { get; private set; }
    /// <summary>The laboratory's own correlation on the day of measuring, where the method's isn't public.</summary>
    public Correlation? OwnCorrelation { get; private set; }

    public Instrument? Instrument { get; private set; }
    public Readiness? Readiness { get; private set; }
    public Person? Measurer { get; private set; }
    public DateOnly Today { get; private set; }
    public DateTimeOffset MeasuredAt => Request.MeasuredAt ?? Now;

    public static async Task<BenchSituation> LoadAsync(
        LabContext context, DeterminationRequest request, DateTimeOffset now, CancellationToken cancel)
    {
        var bench = new BenchSituation(request, now);
        bench.Sample = await context.Samples
            .Include(s => s.Containers).ThenInclude(c => c.Openings).Include(s => s.Tests).AsSplitQuery()
            .FirstOrDefaultAsync(s => s.Number == request.SampleNumber, cancel);
        if (bench.Sample is null)
            return bench;
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        bench.Today = time.Day(now);
        bench.Kind = await context.Grades.Where(g => g.Code == bench.Sample.GradeCode).Select(g => g.Kind).FirstAsync(cancel);
        bench.Method = TestMethods.TryFind(request.Method, out var method) ? method : null;
        bench.OwnCorrelation = await OwnCorrelations.OnAsync(context, bench.Method, time.Day(bench.MeasuredAt), cancel);
        bench.Container = bench.Sample.Containers.FirstOrDefault(c => c.Number == request.ContainerNumber);
        bench.Test = bench.Sample.Tests.Where(t => t.Method == request.Method && t.State != TestState.Cancelled)
            .OrderBy(t => t.State == TestState.Waiting ? 0 : 1).FirstOrDefault() ?? bench.AddedTest();
        bench._made = await context.Determinations.CountAsync(
            d => d.SampleId == bench.Sample.Id && d.Method == request.Method && !d.Revisions.OrderByDescending(r => r.Revision).First().SetAside, cancel);
        var measurer = request.MeasuredBy?.Trim().ToUpperInvariant();
        bench.Measurer = measurer is null
            ? null
            : await context.People.FirstOrDefaultAsync(p => p.NormalizedUserName == measurer && p.Active && !p.IsService, cancel);
        bench.Instrument = await context.Instruments.FirstOrDefaultAsync(i => i.Code == request.Instrument, cancel);
        if (bench.Instrument is not null)
        {
            var day = time.Day(bench.MeasuredAt);
            var checks = await context.Verifications.AsNoTracking()
                .Where(v => v.InstrumentCode == bench.Instrument.Code && v.On == day).ToListAsync(cancel);
            bench.Readiness = Readiness.When(bench.Instrument, checks, day, bench.MeasuredAt);
        }

        return bench;
    }

    /// <summary>Everything that stands against the determination, all at once.</summary>
    public IReadOnlyList<Problem> Problems(Actor actor)
    {
        var problems = new List<Problem>();
        if (Method is null)
            problems.Add(new Problem("/method", $"\"{Request.Method}\" is not a test method of this laboratory."));
        problems.AddRange(ReadingsNeeded.Check(Method, Request.Readings));
        AddSampleProblems(problems);
        AddInstrumentProblems(problems);
        AddPersonProblems(problems, actor);
        if (Method is not null && actor.Origin == "page")
            problems.AddRange(HandlingConfirmed.Check(Method, Request.Readings, Request.Handling));
        return problems;
    }

    public DeterminationInput Input => new(
        Method!.Designation, Test.Authorities, Kind, Container!.Kind, Container.VolumeMillilitres,
        Request.Readings, HandlingWithFill(), OwnCorrelation);

    public Determination Make(Actor actor, EvaluatedDetermination evaluated)
    {
        var determination = new Determination
        {
            Id = Guid.CreateVersion7(Now),
            SampleId = Sample!.Id,
            ContainerId = Container!.Id,
            TestId = Test.Id,
            Method = Method!.Designation,
            Edition = Method.Edition,
            InstrumentCode = Instrument!.Code,
            MeasuredAt = MeasuredAt,
            MeasuredBy = Measurer?.Id,
            RecordedBy = actor.Id,
            RecordedAt = Now,
            Origin = actor.Origin,
            ExternalId = Request.ExternalId,
            SoleTest = Method.OneTestPerContainer,
        };
        determination.Revisions.Add(new DeterminationRevision
        {
            Id = Guid.NewGuid(),
            DeterminationId = determination.Id,
            Revision = 1,
            At = Now,
            By = Measurer?.Id ?? actor.Id,
            ByName = Measurer?.FullName ?? actor.Name,
            Readings = Request.Readings,
            Handling = HandlingWithFill(),
            Findings = evaluated.Findings,
        });
        determination.Results.AddRange(evaluated.Results.Select(r => StoredDetermination.Store(r, determination.Id, 1)));
        return determination;
    }

    public ContainerOpening Opening(Determination determination) => new()
    {
        Id = Guid.NewGuid(),
        ContainerId = Container!.Id,
        At = MeasuredAt,
        By = determination.MeasuredBy,
        Why = $"{determination.Method} on {determination.InstrumentCode}",
    };

    private AssignedTest AddedTest() => new()
    {
        Id = Guid.CreateVersion7(Now),
        SampleId = Sample!.Id,
        Method = Request.Method,
        Authorities = Method is null ? [] : [Method.DefaultAuthority],
        Why = "added at the bench",
    };

    // The fill level is a fact of the container; the bench may only put a newer look in its place.
    private HandlingAsTyped HandlingWithFill() =>
        Request.Handling with { FillPercent = Request.Handling.FillPercent ?? Container!.FillPercent };

    private void AddSampleProblems(List<Problem> problems)
    {
        if (Method is not null && FurtherResults.Check(Sample!.Number, Test, _made) is { } further)
            problems.Add(further);
        if (Sample!.State != SampleState.Received)
            problems.Add(new Problem("/sample", $"Sample {Sample.Number} is {(Sample.State == SampleState.Announced ? "announced, not received yet" : "refused at receipt")}.", ReceiptCondition.Rule));
        if (MeasuredAt > Now + ClockTolerance)
            problems.Add(new Problem("/measuredAt", "It can't have been measured in the future."));
        if (MeasuredAt < Sample.SampledAt)
            problems.Add(new Problem("/measuredAt", "It was measured before the sample was drawn."));
        if (Container is null)
        {
            problems.Add(new Problem("/containerNumber", $"Sample {Sample.Number} has no container {Request.ContainerNumber}."));
            return;
        }

        if (Container.Leaking)
            problems.Add(new Problem("/containerNumber", $"Container {Container.Number} leaks: it is not fit for vapour pressure.", ReceiptCondition.Rule));
        if (Method is not null && OneTestAContainer.Check(Method, Container) is { } opened)
            problems.Add(opened);
        if (RetainedPortion.Check(Sample, Container, Today) is { } retained)
            problems.Add(retained);
    }

    private void AddInstrumentProblems(List<Problem> problems)
    {
        if (Instrument is null)
        {
            problems.Add(new Problem("/instrument", $"There is no instrument \"{Request.Instrument}\"."));
            return;
        }

        if (Method is not null && !Instrument.Methods.Contains(Method.Designation))
            problems.Add(new Problem("/instrument", $"{Instrument.Code} is not set up for {Method.Designation}."));
        if (Readiness is { Ready: false } state)
            problems.Add(new Problem("/instrument", $"{Instrument.Code} is not ready. {string.Join(" ", state.Reasons)} {string.Join(" ", state.Remedies)}", Readiness.Rule));
        if (Request.Readings.TotalPressure is { } total && VerifiedRange.Check(Instrument, total) is { } outside)
            problems.Add(outside);
    }

    private void AddPersonProblems(List<Problem> problems, Actor actor)
    {
        if (Request.MeasuredBy is null)
        {
            if (!actor.IsKey)
                problems.Add(new Problem("/measuredBy", "Who measured?"));
        }
        else if (Measurer is null)
            problems.Add(new Problem("/measuredBy", $"\"{Request.MeasuredBy}\" is no account of a person in this laboratory."));
        else if (!Rights.Allow(Measurer.Roles, Right.Determine))
            problems.Add(new Problem("/measuredBy", $"{Measurer.FullName} may not measure: that is for the {Rights.HoldersText(Right.Determine)}."));
        else if (!actor.IsKey && actor.Origin == "page" && Measurer.Id != actor.Id)
            problems.Add(new Problem("/measuredBy", "At the bench a person reports what they measured themselves."));
    }
}
