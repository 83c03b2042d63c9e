using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Works out a batch's evidence from what is recorded now: the one function behind page, interface and decision.</summary>
internal static class BatchAssessing
{
    public static async Task<Evidence> WorkOutAsync(LabContext context, Guid batchId, CancellationToken cancel)
    {
        var batch = await context.Batches.AsNoTracking().FirstAsync(b => b.Id == batchId, cancel);
        var grade = await context.Grades.AsNoTracking().FirstAsync(g => g.Code == batch.GradeCode, cancel);
        var time = LaboratoryTime.Of(await context.Settings.AsNoTracking().FirstAsync(cancel));
        var areas = await LimitCatalogue.LoadAsync(context, cancel);
        var precision = await PrecisionInForce.LoadAsync(context, cancel);
        var samples = await BatchSamples.LoadAsync(context, batch, time, precision, grade.ResultsInAll, cancel);

        var pick = BatchLimits.Pick(areas, batch, grade);
        var levels = new List<LevelEvidence>();
        var limits = pick.Limits.Select(l => LimitJudge.Judge(l, samples, precision, grade, levels)).ToList();
        var outcome = OverallOutcome.Of(limits.Select(l => (l.Outcome, l.Required)));
        return new Evidence
        {
            Batch = batch.Number,
            Grade = grade.Code,
            GradeName = grade.Name,
            State = batch.State,
            Tank = batch.TankCode,
            CubicMetres = batch.CubicMetres,
            EthanolPercent = batch.EthanolPercent,
            EthanolMethod = batch.EthanolMethod,
            From = batch.From,
            Until = batch.Until,
            Destinations = batch.Destinations,
            Rule = grade.Rule,
            Confidence = grade.Confidence,
            Samples = [.. samples.Select(s => s.Evidence)],
            Levels = [.. levels.DistinctBy(l => (l.Quantity, l.Unit))],
            Limits = limits,
            Remarks = pick.Remarks,
            Blocks = Blocks(batch, samples),
            Outcome = pick.Incomplete ? Outcome.Incomplete : outcome,
            FailsLegalLimit = limits.Any(l => l.Required && l.Standing == Standing.Legal && l.Outcome != Outcome.Conforms),
        };
    }

    private static List<string> Blocks(Batch batch, IReadOnlyList<AssessedSample> samples)
    {
        var blocks = new List<string>();
        if (batch.Destinations.Count == 0)
            blocks.Add("No destination is named: the limits can't be picked.");
        foreach (var sample in samples.Where(s => s.Counts))
        {
            blocks.AddRange(sample.Sample.Tests.Where(t => t.State == TestState.Waiting).OrderBy(t => t.Method, StringComparer.Ordinal)
                .Select(t => $"Sample {sample.Sample.Number} waits for {t.Method}: {t.Why ?? "not measured yet"}."));
            blocks.AddRange(sample.Determinations.Where(d => d.MeasurerId is null)
                .Select(d => $"A determination of sample {sample.Sample.Number} waits for a person to take it on."));
        }

        if (samples.Count == 0)
            blocks.Add("No sample is registered for the batch.");
        else if (!samples.Any(s => s.Counts))
            blocks.Add("No sample of the batch counts for a decision: draw a new one.");
        return blocks;
    }
}
