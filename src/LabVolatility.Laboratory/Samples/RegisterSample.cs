using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Announces or registers a sample, gives it its number and assigns the tests of its grade.</summary>
public sealed class RegisterSample(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "register sample";

    public async Task<Answer<string>> Run(Actor actor, SampleRequest request, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.RegisterSamples, "Registering samples") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        request = actor.IsKey ? ForAPersonToReceive(request) : request;
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<string>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<string>.Repeated(known);

        var now = clock.GetUtcNow();
        var grade = await context.Grades.FirstOrDefaultAsync(g => g.Code == request.Grade, cancel);
        var batch = request.Batch is null ? null : await context.Batches.FirstOrDefaultAsync(b => b.Number == request.Batch, cancel);
        var point = request.SamplePoint is null ? null : await context.SamplePoints.FirstOrDefaultAsync(p => p.Code == request.SamplePoint, cancel);
        var problems = await ProblemsAsync(context, request, grade, batch, point, now, cancel);
        if (problems.Count > 0)
            return Answer<string>.Invalid(problems);

        var tank = request.Tank ?? point?.TankCode ?? batch?.TankCode;
        var sample = Make(request, grade!, batch, tank, await NextNumberAsync(context, now, cancel), actor.Id, now);
        context.Samples.Add(sample);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = sample.Number, At = now });
        context.Act = actor.Does(sample.State == SampleState.Announced ? "announce sample" : "register sample", request.VerdictNote);
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(context, batch is null ? [] : [batch.Id], $"sample {sample.Number} was registered", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(sample.Number);
    }

    // A program can't decide about a departure: the sample stays announced until a person has looked at it.
    private static SampleRequest ForAPersonToReceive(SampleRequest request)
    {
        var departures = request.ReceivedAt is null ? [] : ReceiptCondition.Departures(request.Containers);
        return departures.Count == 0 ? request : request with
        {
            ReceivedAt = null,
            Note = $"{request.Note} Arrived {request.ReceivedAt!.Value.UtcDateTime:yyyy-MM-dd HH:mm} UTC. {string.Join(' ', departures.Take(3))} A person decides at receipt.".Trim(),
        };
    }

    private static async Task<List<Problem>> ProblemsAsync(
        LabContext context, SampleRequest request, Grade? grade, Batch? batch, SamplePoint? point, DateTimeOffset now, CancellationToken cancel)
    {
        var problems = new List<Problem>();
        if (grade is null || !grade.Active)
            problems.Add(new Problem("/grade", $"There is no grade \"{request.Grade}\"."));
        if (request.Batch is not null && batch is null)
            problems.Add(new Problem("/batch", $"There is no batch \"{request.Batch}\"."));
        if (grade is not null && batch is not null && batch.GradeCode != grade.Code)
            problems.Add(new Problem("/batch", $"Batch {batch.Number} is {batch.GradeCode}, not {grade.Code}."));
        if (request.Tank is not null && !await context.Tanks.AnyAsync(t => t.Code == request.Tank, cancel))
            problems.Add(new Problem("/tank", $"There is no tank \"{request.Tank}\"."));
        if (request.SamplePoint is not null && point is null)
            problems.Add(new Problem("/samplePoint", $"There is no sample point \"{request.SamplePoint}\"."));
        if (request.Tank is not null && point?.TankCode is { } at && at != request.Tank)
            problems.Add(new Problem("/samplePoint", $"Sample point {point.Code} is on tank {at}, not on {request.Tank}."));
        SampleProblems.Check(request, now, problems);
        return problems;
    }

    internal static async Task<string> NextNumberAsync(LabContext context, DateTimeOffset now, CancellationToken cancel)
    {
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var year = time.Local(now).Year;
        var serial = await context.NextAsync($"sample {year}", cancel);
        return ScanCode.ForSample(year, checked((int)serial));
    }

    internal static Sample Make(
        SampleRequest request, Grade grade, Batch? batch, string? tank, string number, Guid by, DateTimeOffset now, Guid? resampleOf = null)
    {
        var sample = new Sample
        {
            Id = Guid.CreateVersion7(now),
            Number = number,
            GradeCode = grade.Code,
            BatchId = batch?.Id,
            TankCode = tank,
            SamplePointCode = request.SamplePoint,
            Level = request.Level,
            State = StateOf(request),
            SampledAt = request.SampledAt!.Value,
            SampledBy = request.SampledBy!.Trim(),
            RegisteredAt = now,
            RegisteredBy = by,
            ReceivedAt = request.ReceivedAt,
            ReceivedBy = request.ReceivedAt is null ? null : by,
            Verdict = request.Verdict,
            VerdictNote = request.VerdictNote,
            VerdictBy = request.Verdict == ReceiptVerdict.AsExpected ? null : by,
            Note = request.Note,
            ResampleOf = resampleOf,
        };
        for (var i = 0; i < request.Containers.Count; i++)
            sample.Containers.Add(Make(sample, i + 1, request.Containers[i]));
        foreach (var test in grade.Tests)
        {
            sample.Tests.Add(new AssignedTest
            {
                Id = Guid.NewGuid(),
                SampleId = sample.Id,
                Method = test.Method,
                Authorities = test.Authorities,
                Wanted = test.Duplicate ? 2 : 1,
                DueAt = (request.ReceivedAt ?? now).AddHours(test.HoursToResult),
                State = sample.State == SampleState.Refused ? TestState.Cancelled : TestState.Waiting,
                Why = "assigned by the grade",
            });
        }

        return sample;
    }

    private static SampleState StateOf(SampleRequest request) =>
        request.Verdict is ReceiptVerdict.Resample or ReceiptVerdict.Reject ? SampleState.Refused
        : request.ReceivedAt is null ? SampleState.Announced
        : SampleState.Received;

    private static Container Make(Sample sample, int number, ContainerRequest request) => new()
    {
        Id = Guid.NewGuid(),
        SampleId = sample.Id,
        Number = number,
        Code = ScanCode.ForContainer(sample.Number, number),
        Kind = request.Kind,
        VolumeMillilitres = request.VolumeMillilitres,
        FillPercent = request.FillPercent,
        TemperatureTyped = request.Temperature,
        TemperatureCelsius = ReceiptCondition.Celsius(request.Temperature),
        Seal = request.Seal,
        SealIntact = request.SealIntact,
        Leaking = request.Leaking,
        Condition = request.Condition,
    };
}
