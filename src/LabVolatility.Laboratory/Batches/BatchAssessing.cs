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
    public static async Task<Evidence> WorkOutAsync(LabContext context, Guid batchId, CancellationToken cancel) =>
        (await WorkOutAllAsync(context, [batchId], cancel))[batchId];

    /// <summary>The evidence of several batches by id; what they share is read once.</summary>
    public static Task<IReadOnlyDictionary<Guid, Evidence>> WorkOutAllAsync(
        LabContext context, IReadOnlyList<Guid> batchIds, CancellationToken cancel) => WorkOutAllAsync(context, batchIds, null, cancel);

    /// <summary>The evidence of several batches as they would stand elsewhere or at another time.</summary>
    /// <param name="context">The laboratory.</param>
    /// <param name="batchIds">The batches.</param>
    /// <param name="asIf">Gives a batch the destination and the period that are asked for; nothing of it is kept.</param>
    /// <param name="cancel">Stops the work.</param>
    public static async Task<IReadOnlyDictionary<Guid, Evidence>> WorkOutAllAsync(
        LabContext context, IReadOnlyList<Guid> batchIds, Action<Batch>? asIf, CancellationToken cancel)
    {
        if (batchIds.Count == 0)
            return new Dictionary<Guid, Evidence>();
        var batches = await context.Batches.AsNoTracking().Where(b => batchIds.Contains(b.Id))
            .Join(context.Grades, b => b.GradeCode, g => g.Code, (batch, grade) => new { Batch = batch, Grade = grade }).ToListAsync(cancel);
        foreach (var batch in batches)
            asIf?.Invoke(batch.Batch);
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var areas = await LimitCatalogue.LoadAsync(context, cancel);
        var precision = await PrecisionInForce.LoadAsync(context, cancel);
        var samples = await BatchSamples.LoadAsync(
            context, [.. batches.Select(b => (b.Batch, b.Grade.ResultsInAll))], time, precision, cancel);
        var parties = await BatchParties.LoadAsync(context, batchIds, cancel);
        return batches.ToDictionary(b => b.Batch.Id, b => WorkOut(b.Batch, b.Grade, areas, precision, [.. samples[b.Batch.Id]], parties));
    }

    private static Evidence WorkOut(
        Batch batch, Grade grade, IReadOnlyList<Area> areas, IReadOnlyList<PrecisionStatement> precision, IReadOnlyList<AssessedSample> samples,
        BatchParties reported)
    {
        var levels = new List<LevelEvidence>();
        var judged = StateJudge.Judge(batch, grade, areas, precision, samples, levels);
        var limits = judged.Limits.ToList();
        var parties = new PartyJudge(samples, levels, limits, precision, grade.Parties).Judge(reported.Of(batch.Id));
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
            Parties = parties,
            Dispute = DisputeJudge.Judge(parties),
            Steps = reported.StepsOf(batch.Id),
            Remarks = judged.Remarks,
            Blocks = Blocks(batch, samples),
            Outcome = judged.Incomplete ? Outcome.Incomplete : outcome,
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
                .Select(t => $"Sample {sample.Sample.Number} waits for {t.Method}: {(t.Why ?? "not measured yet").TrimEnd('.')}."));
            blocks.AddRange(sample.Determinations.Where(d => d.MeasurerId is null && !d.Current.SetAside)
                .Select(d => $"A determination of sample {sample.Sample.Number} waits for a person to take it on."));
            blocks.AddRange(sample.InDoubt.Select(d => d.Instrument).Distinct()
                .Select(instrument => $"{instrument} was out of its band after sample {sample.Sample.Number} was measured, and nothing has shown it in order since: measure a fresh bottle of the verification fluid that day, or set the result aside for that cause and measure again."));
        }

        blocks.AddRange(samples.Where(s => s.Sample is { State: SampleState.Announced, ResampleOf: not null })
            .Select(s => $"Sample {s.Sample.Number} was called for and has not come: receive it, or refuse it with the reason."));
        if (samples.Count == 0)
            blocks.Add("No sample is registered for the batch.");
        else if (!samples.Any(s => s.Counts))
            blocks.Add("No sample of the batch counts for a decision: draw a new one.");
        return blocks;
    }
}
