using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Takes an assigned test off a sample, with a reason, so that the batch no longer waits for it.</summary>
public sealed class CancelTest(Func<LabContext> open)
{
    public async Task<Answer<Guid>> Run(Actor actor, Guid testId, string? reason, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.Decide, "Taking a test off a sample") is { } lacking)
            return Answer<Guid>.Forbidden(lacking);
        if (string.IsNullOrWhiteSpace(reason))
            return Answer<Guid>.Invalid(new Problem("/reason", "Say why the test isn't needed."));
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var test = await context.AssignedTests.FirstOrDefaultAsync(t => t.Id == testId, cancel);
        if (test is null)
            return Answer<Guid>.NotFound("There is no such test.");
        if (test.State != TestState.Waiting)
            return Answer<Guid>.Conflict($"The test is {test.State.ToString().ToLowerInvariant()} already.");
        test.State = TestState.Cancelled;
        test.Why = reason.Trim();
        context.Act = actor.Does("cancel test", reason.Trim());
        await context.SaveChangesAsync(cancel);
        var batch = await context.Samples.Where(s => s.Id == test.SampleId).Select(s => s.BatchId).FirstAsync(cancel);
        await ReviewMarks.MarkAsync(context, batch is { } id ? [id] : [], $"{test.Method} was taken off a sample", context.Clock.GetUtcNow(), cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(testId);
    }
}
