using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Brings an assigned test up to date after a determination: done once it has what the plan and the steps taken ask for.</summary>
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
        var byStep = await context.StepsTaken.Where(s => s.TestId == test.Id).MaxAsync(s => s.Wanted, cancel);
        test.Wanted = Math.Max(planned, byStep ?? 1);
        // Results that differ don't call for more by themselves: a person takes the next step of the tree.
        test.State = counting >= test.Wanted ? TestState.Reported : TestState.Waiting;
        test.Why = verdict?.Why ?? test.Why;
        await RetainedPortion.DateAsync(context, test, cancel);
        if (!context.ChangeTracker.HasChanges())
            return;
        await context.SaveChangesAsync(cancel);
    }
}
