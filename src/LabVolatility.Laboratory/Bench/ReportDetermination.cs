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
    public async Task<Answer<ReportedDetermination>> Run(Actor actor, DeterminationRequest request, CancellationToken cancel = default)
    {
        if (!actor.IsKey && actor.Lacks(Right.Determine, "Reporting determinations") is { } lacking)
            return Answer<ReportedDetermination>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        if (await RepeatedAsync(context, request, cancel) is { } earlier)
            return Answer<ReportedDetermination>.Repeated(earlier);

        var bench = await BenchSituation.LoadAsync(context, request, clock.GetUtcNow(), cancel);
        if (bench.Sample is null)
            return Answer<ReportedDetermination>.NotFound($"There is no sample {request.SampleNumber}.");
        var problems = bench.Problems(actor);
        if (problems.Count > 0)
            return problems.Any(p => p.Rule is not null)
                ? Answer<ReportedDetermination>.Refused(problems)
                : Answer<ReportedDetermination>.Invalid(problems);

        var precision = await PrecisionInForce.LoadAsync(context, cancel);
        var evaluated = DeterminationEvaluation.Evaluate(bench.Input(precision));
        if (BlockingFindings(evaluated) is { Count: > 0 } blocking)
            return Answer<ReportedDetermination>.Refused(blocking);

        var determination = bench.Make(actor, evaluated);
        context.Determinations.Add(determination);
        context.ContainerOpenings.Add(bench.Opening(determination));
        context.Commands.Add(new PerformedCommand
        {
            Id = request.CommandId, Name = "report determination", Subject = determination.Id.ToString(), At = bench.Now,
        });
        context.Act = actor.Does("report determination");
        await context.SaveChangesAsync(cancel);
        await TestProgress.UpdateAsync(context, bench.Test, precision, cancel);
        await Batches.ReviewMarks.MarkAsync(
            context, bench.Sample.BatchId is { } batch ? [batch] : [],
            $"a further determination of sample {bench.Sample.Number} was reported", bench.Now, cancel);
        await RemoveDraftsAsync(context, bench.Test, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<ReportedDetermination>.Done(new ReportedDetermination(
            determination.Id, evaluated, DuplicatesOf(bench.Test)));
    }

    private static string? DuplicatesOf(AssignedTest? test) => test?.Why;

    internal static IReadOnlyList<Problem> BlockingFindings(EvaluatedDetermination evaluated) =>
        [.. evaluated.Blocking.Select(f => new Problem("/readings", f.Message, f.Code))];

    private static async Task RemoveDraftsAsync(LabContext context, AssignedTest? test, CancellationToken cancel)
    {
        if (test is null)
            return;
        await context.Drafts.Where(d => d.TestId == test.Id).ExecuteDeleteAsync(cancel);
    }

    private static async Task<ReportedDetermination?> RepeatedAsync(
        LabContext context, DeterminationRequest request, CancellationToken cancel)
    {
        Guid? id = await context.Commands.Where(c => c.Id == request.CommandId).Select(c => c.Subject)
            .FirstOrDefaultAsync(cancel) is { } subject ? Guid.Parse(subject) : null;
        if (id is null && request.ExternalId is not null)
        {
            id = await context.Determinations
                .Where(d => d.InstrumentCode == request.Instrument && d.ExternalId == request.ExternalId)
                .Select(d => (Guid?)d.Id).FirstOrDefaultAsync(cancel);
        }

        return id is null ? null : await StoredDetermination.ReadAsync(context, id.Value, cancel);
    }
}
