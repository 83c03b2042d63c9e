using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Brings an assigned test up to date after a determination: done, or how many more by the duplicates' rule.</summary>
internal static class TestProgress
{
    public static async Task UpdateAsync(
        LabContext context, AssignedTest? test, IReadOnlyList<PrecisionStatement> precision, CancellationToken cancel)
    {
        if (test is null || test.State == TestState.Cancelled)
            return;
        var all = await DeterminationStates.LoadAsync(context, [test.SampleId], cancel);
        var grade = await context.Samples.Where(s => s.Id == test.SampleId)
            .Join(context.Grades, s => s.GradeCode, g => g.Code, (_, g) => g).AsNoTracking().FirstAsync(cancel);
        var plan = grade.Tests.FirstOrDefault(t => t.Method == test.Method);
        var verdict = SampleDuplicates.Judge(test, all, precision, grade.ResultsInAll);
        var counting = all.Count(d => d.TestId == test.Id && d.DoesNotCount is null);
        var planned = plan?.Duplicate == true ? 2 : 1;
        test.Wanted = Math.Max(planned, counting + (verdict?.Next == NextStep.More ? verdict.Needed ?? 1 : 0));
        test.State = counting >= test.Wanted && verdict?.Next != NextStep.Investigate ? TestState.Reported : TestState.Waiting;
        test.Why = verdict?.Why ?? test.Why;
        await RetainedPortion.DateAsync(context, test, cancel);
        if (!context.ChangeTracker.HasChanges())
            return;
        await context.SaveChangesAsync(cancel);
    }
}
