using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Reports a determination: readings as typed, results worked out here, findings; bench and interface alike.</summary>
public sealed class ReportDetermination(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "report determination";

    public async Task<Answer<ReportedDetermination>> Run(Actor actor, DeterminationRequest request, CancellationToken cancel = default)
    {
        if (!actor.IsKey && actor.Lacks(Right.Determine, "Reporting determinations") is { } lacking)
            return Answer<ReportedDetermination>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<ReportedDetermination>.Conflict(EarlierCommand.Taken);
        if (await RepeatedAsync(context, earlier, request, cancel) is { } stored)
            return Answer<ReportedDetermination>.Repeated(stored);

        var bench = await BenchSituation.LoadAsync(context, request, clock.GetUtcNow(), cancel);
        if (bench.Sample is null)
            return Answer<ReportedDetermination>.NotFound($"There is no sample {request.SampleNumber}.");
        var problems = bench.Problems(actor);
        if (problems.Count > 0)
            return problems.Any(p => p.Rule is not null)
                ? Answer<ReportedDetermination>.Refused(problems)
                : Answer<ReportedDetermination>.Invalid(problems);

        var precision = await PrecisionInForce.LoadAsync(context, cancel);
        var evaluated = DeterminationEvaluation.Evaluate(bench.Input);
        if (BlockingFindings(evaluated) is { Count: > 0 } blocking)
            return Answer<ReportedDetermination>.Refused(blocking);

        var determination = bench.Make(actor, evaluated);
        if (context.Entry(bench.Test).State == EntityState.Detached)
            context.AssignedTests.Add(bench.Test);
        context.Determinations.Add(determination);
        context.ContainerOpenings.Add(bench.Opening(determination));
        context.Commands.Add(new PerformedCommand
        {
            Id = request.CommandId, Name = CommandName, Subject = determination.Id.ToString(), At = bench.Now,
        });
        context.Act = actor.Does("report determination");
        try
        {
            await context.SaveChangesAsync(cancel);
        }
        catch (DbUpdateException e) when (DatabaseRefusal.Of(context, e) is { } refusal)
        {
            return Answer<ReportedDetermination>.Refused(refusal);
        }
        await TestProgress.UpdateAsync(context, bench.Test, precision, cancel);
        await Batches.ReviewMarks.MarkAsync(
            context, bench.Sample.BatchId is { } batch ? [batch] : [],
            $"a further determination of sample {bench.Sample.Number} was reported", bench.Now, cancel);
        await RemoveDraftAsync(context, bench.Test, determination.MeasuredBy, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<ReportedDetermination>.Done(new ReportedDetermination(
            determination.Id, bench.Sample.Number, evaluated, bench.Test.Why));
    }

    internal static IReadOnlyList<Problem> BlockingFindings(EvaluatedDetermination evaluated) =>
        [.. evaluated.Blocking.Select(f => new Problem(PlaceOf(f.Code), f.Message, f.Code))];

    // Where the bench and other programs look for what the finding speaks of.
    private static string PlaceOf(string code) => code switch
    {
        FindingCodes.TemperatureOff => "/readings/temperature",
        FindingCodes.RatioOff => "/readings/vaporLiquidRatio",
        FindingCodes.FillLevel => "/handling/fillPercent",
        FindingCodes.NotAirSaturated => "/handling/airSaturated",
        FindingCodes.NotChilled => "/handling/chilledTo",
        FindingCodes.TwoPhases or FindingCodes.Hazy => "/handling/hazy",
        FindingCodes.Container or FindingCodes.FirstTest => "/containerNumber",
        _ => "/readings",
    };

    // Only what this person typed is done with: somebody else may be typing the duplicate.
    private static async Task RemoveDraftAsync(LabContext context, AssignedTest test, Guid? measurer, CancellationToken cancel) =>
        await context.Drafts.Where(d => d.TestId == test.Id && d.PersonId == measurer).ExecuteDeleteAsync(cancel);

    private static async Task<ReportedDetermination?> RepeatedAsync(
        LabContext context, EarlierCommand earlier, DeterminationRequest request, CancellationToken cancel)
    {
        Guid? id = earlier.Subject is { } subject ? Guid.Parse(subject) : null;
        if (id is null && request.ExternalId is not null)
        {
            id = await context.Determinations
                .Where(d => d.InstrumentCode == request.Instrument && d.ExternalId == request.ExternalId)
                .Select(d => (Guid?)d.Id).FirstOrDefaultAsync(cancel);
        }

        return id is null ? null : await StoredDetermination.ReadAsync(context, id.Value, cancel);
    }
}
