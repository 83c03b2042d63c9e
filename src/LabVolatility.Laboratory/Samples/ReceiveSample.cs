using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Receives an announced sample with the condition of each container.</summary>
public sealed class ReceiveSample(Func<LabContext> open, TimeProvider clock)
{
    /// <param name="Number">The sample.</param>
    /// <param name="Version">The state of the sample that the person saw.</param>
    /// <param name="Containers">Condition, in the order of the container numbers; kind and volume stay as registered.</param>
    /// <param name="Verdict">What was decided about a departure.</param>
    /// <param name="VerdictNote">Why.</param>
    /// <param name="SampledAt">When it was drawn; null: as announced.</param>
    /// <param name="SampledBy">Who drew it; null: as announced.</param>
    public sealed record Request(
        string Number, Guid Version, IReadOnlyList<ContainerRequest> Containers, ReceiptVerdict Verdict, string? VerdictNote,
        DateTimeOffset? SampledAt = null, string? SampledBy = null);

    public async Task<Answer<string>> Run(Actor actor, Request request, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.RegisterSamples, "Receiving samples") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var sample = await context.Samples.Include(s => s.Containers).Include(s => s.Tests)
            .FirstOrDefaultAsync(s => s.Number == request.Number, cancel);
        if (sample is null)
            return Answer<string>.NotFound($"There is no sample {request.Number}.");
        if (sample.State != SampleState.Announced)
            return Answer<string>.Conflict($"Sample {sample.Number} is {sample.State.ToString().ToLowerInvariant()} already; only an announced one can be received.");
        if (sample.Version != request.Version)
            return Answer<string>.Conflict(await ChangedMeanwhile.TextAsync<Sample>(context, $"Sample {sample.Number}", sample.Id, cancel));

        var now = clock.GetUtcNow();
        var problems = new List<Problem>();
        CheckDrawing(sample, request, now, problems);
        if (request.Containers.Count != sample.Containers.Count)
            problems.Add(new Problem("/containers", $"{sample.Containers.Count} containers were announced; {request.Containers.Count} are described."));
        SampleProblems.CheckContainers(request.Containers, problems);
        if (ReceiptCondition.Check(ReceiptCondition.Departures(request.Containers), request.Verdict, request.VerdictNote) is { } departure)
            problems.Add(departure);
        if (problems.Count > 0)
            return Answer<string>.Invalid(problems);

        var plan = await context.Grades.AsNoTracking().Where(g => g.Code == sample.GradeCode).Select(g => g.Tests).FirstAsync(cancel);
        Apply(sample, request, plan, actor.Id, now);
        context.Act = actor.Does("receive sample", request.VerdictNote);
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(
            context, sample.BatchId is { } batch ? [batch] : [], $"sample {sample.Number} was received", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(sample.Number);
    }

    // A sample that was called for tells only now when it was drawn and by whom; one that is refused may never have been.
    private static void CheckDrawing(Sample sample, Request request, DateTimeOffset now, List<Problem> problems)
    {
        var called = sample.SampledBy.Length == 0 && request.Verdict is not (ReceiptVerdict.Resample or ReceiptVerdict.Reject);
        if (called && string.IsNullOrWhiteSpace(request.SampledBy))
            problems.Add(new Problem("/sampledBy", "Who drew it?"));
        if (called && request.SampledAt is null)
            problems.Add(new Problem("/sampledAt", "When was it drawn?"));
        if (request.SampledAt > now)
            problems.Add(new Problem("/sampledAt", "The sample can't have been drawn in the future."));
    }

    private static void Apply(Sample sample, Request request, IReadOnlyList<GradeTest> plan, Guid by, DateTimeOffset now)
    {
        var refused = request.Verdict is ReceiptVerdict.Resample or ReceiptVerdict.Reject;
        sample.State = refused ? SampleState.Refused : SampleState.Received;
        sample.SampledAt = request.SampledAt ?? sample.SampledAt;
        sample.SampledBy = request.SampledBy?.Trim() ?? sample.SampledBy;
        sample.ReceivedAt = now;
        sample.ReceivedBy = by;
        sample.Verdict = request.Verdict;
        sample.VerdictNote = request.VerdictNote;
        sample.VerdictBy = request.Verdict == ReceiptVerdict.AsExpected ? null : by;
        foreach (var (container, seen) in sample.Containers.OrderBy(c => c.Number).Zip(request.Containers))
        {
            container.FillPercent = seen.FillPercent;
            container.TemperatureTyped = seen.Temperature;
            container.TemperatureCelsius = ReceiptCondition.Celsius(seen.Temperature);
            container.Seal = seen.Seal ?? container.Seal;
            container.SealIntact = seen.SealIntact;
            container.Leaking = seen.Leaking;
            container.Condition = seen.Condition;
        }

        foreach (var test in sample.Tests)
            test.DueAt = plan.FirstOrDefault(t => t.Method == test.Method) is { } planned ? now.AddHours(planned.HoursToResult) : test.DueAt;
        foreach (var test in sample.Tests.Where(_ => refused))
        {
            test.State = TestState.Cancelled;
            test.Why = "sample refused at receipt";
        }
    }
}
