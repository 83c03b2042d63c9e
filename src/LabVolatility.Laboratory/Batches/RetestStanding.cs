using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Loads how the tests of a batch stand at the bench, and asks the tree.</summary>
internal static class RetestStanding
{
    public static async Task<RetestAdvice?> AdviseAsync(
        LabContext context, Batch batch, Evidence evidence, DecisionInForce? inForce, DateOnly today, CancellationToken cancel)
    {
        var grade = await context.Grades.AsNoTracking().FirstAsync(g => g.Code == batch.GradeCode, cancel);
        return WhatComesNext.Of(evidence, grade.Tree, await BenchAsync(context, batch, grade.ResultsInAll, evidence, today, cancel), inForce);
    }

    private static async Task<IReadOnlyList<BenchStanding>> BenchAsync(
        LabContext context, Batch batch, int most, Evidence evidence, DateOnly today, CancellationToken cancel)
    {
        var standing = evidence.Samples.Where(s => s is { Void: null, State: SampleState.Received }).Select(s => s.Number).ToList();
        var samples = await context.Samples.AsNoTracking().Where(s => s.BatchId == batch.Id && standing.Contains(s.Number))
            .Include(s => s.Containers).ThenInclude(c => c.Openings).Include(s => s.Tests).AsSplitQuery()
            .OrderBy(s => s.Number).ToListAsync(cancel);
        var made = await DeterminationStates.LoadAsync(context, [.. samples.Select(s => s.Id)], cancel);
        var precision = await PrecisionInForce.LoadAsync(context, cancel);
        return [.. samples.SelectMany(
            s => s.Tests.Where(t => t.State != TestState.Cancelled).OrderBy(t => t.Method, StringComparer.Ordinal),
            (s, t) => Of(s, t, SampleDuplicates.Judge(t, made, precision, most), made.Count(d => d.TestId == t.Id && d.DoesNotCount is null)))];

        BenchStanding Of(Sample sample, AssignedTest test, DuplicateVerdict? verdict, int counting)
        {
            var containers = ContainerSheet.Of(sample, TestMethods.TryFind(test.Method, out var method) ? method : null, today);
            return new BenchStanding(
                sample.Number, test.Id, test.Method, test.State, counting, test.Wanted, ContainerSheet.Offered(containers),
                verdict is null or { Next: NextStep.Report }, most,
                containers.FirstOrDefault(c => c.WhyNot is null && !c.Retained)?.Container.Number);
        }
    }
}
