using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Amends a reported determination with a reason, or sets it aside for an assignable cause; the earlier state stays readable.</summary>
public sealed class AmendDetermination(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "amend determination";

    public const string Rule = "amended-with-a-reason";

    /// <param name="CommandId">The same id sent again amends nothing twice.</param>
    /// <param name="Determination">Which one.</param>
    /// <param name="ExpectedRevision">The revision that the person saw.</param>
    /// <param name="Readings">Corrected readings; null leaves them.</param>
    /// <param name="Handling">Corrected handling; null leaves it.</param>
    /// <param name="SetAside">True: it no longer counts.</param>
    /// <param name="AssignableCause">Due when set aside.</param>
    /// <param name="Reason">Due always.</param>
    public sealed record Request(
        Guid CommandId, Guid Determination, int ExpectedRevision, ReadingsAsTyped? Readings, HandlingAsTyped? Handling,
        bool SetAside, string? AssignableCause, string? Reason);

    public async Task<Answer<int>> Run(Actor actor, Request request, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.AmendBeforeDecision))
            return Answer<int>.Forbidden($"Amending is for the {Rights.HoldersText(Right.AmendBeforeDecision)}.");
        if (Problems(request) is { Count: > 0 } problems)
            return Answer<int>.Invalid(problems);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<int>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is not null)
            return Answer<int>.Repeated(request.ExpectedRevision + 1);
        var row = await context.Determinations.AsNoTracking().FirstOrDefaultAsync(d => d.Id == request.Determination, cancel);
        if (row is null)
            return Answer<int>.NotFound("There is no such determination.");
        var state = (await DeterminationStates.LoadAsync(context, [row.SampleId], cancel)).First(d => d.Id == row.Id);
        var sample = await context.Samples.AsNoTracking().FirstAsync(s => s.Id == row.SampleId, cancel);
        var decided = sample.BatchId is not null && await IsDecidedAsync(context, sample.BatchId.Value, cancel);
        if (!decided && state.MeasurerId != actor.Id && !actor.May(Right.AmendAfterDecision))
            return Answer<int>.Forbidden($"{state.Measurer ?? "Somebody else"} measured it: amending another person's result is for the {Rights.HoldersText(Right.AmendAfterDecision)}.");
        if (decided && actor.Lacks(Right.AmendAfterDecision, "Amending after a decision") is { } lacking)
            return Answer<int>.Forbidden(lacking);
        if (state.Current.Revision != request.ExpectedRevision)
            return Answer<int>.Conflict($"{state.Current.ByName} amended it meanwhile; it is at revision {state.Current.Revision}. Look at it again.", state.Current.Revision);

        var revision = await RevisionAsync(context, state, sample.GradeCode, actor, request, cancel);
        if (revision.Problems.Count > 0)
            return Answer<int>.Refused(revision.Problems);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = row.Id.ToString(), At = clock.GetUtcNow() });
        context.Act = actor.Does(request.SetAside ? "set determination aside" : "amend determination", request.Reason!.Trim());
        try
        {
            await context.SaveChangesAsync(cancel);
        }
        catch (DbUpdateException e) when (context.IsUniqueViolation(e))
        {
            await transaction.RollbackAsync(cancel);
            return Answer<int>.Conflict("Somebody else amended it at the same moment. Look at it again.");
        }
        catch (DbUpdateException e) when (DatabaseRefusal.Of(context, e) is { } refusal)
        {
            return Answer<int>.Refused(refusal);
        }

        await AfterAsync(context, state, sample.BatchId, $"a result of sample {sample.Number} was amended: {request.Reason.Trim()}", cancel);
        await transaction.CommitAsync(cancel);
        return Answer<int>.Done(state.Current.Revision + 1);
    }

    private static List<Problem> Problems(Request request)
    {
        var problems = new List<Problem>();
        if (string.IsNullOrWhiteSpace(request.Reason))
            problems.Add(new Problem("/reason", "Say why it is amended: the reason stays with the record.", Rule));
        if (request.SetAside && string.IsNullOrWhiteSpace(request.AssignableCause))
            problems.Add(new Problem("/assignableCause", "A result is set aside only for a recorded assignable cause.", Rule));
        return problems;
    }

    internal static Task<bool> IsDecidedAsync(LabContext context, Guid batchId, CancellationToken cancel) =>
        context.Decisions.AnyAsync(
            d => d.BatchId == batchId && d.Kind != DecisionKind.Withdraw
                && d.Sequence == context.Decisions.Where(o => o.BatchId == batchId).Max(o => o.Sequence), cancel);

    private async Task<(IReadOnlyList<Problem> Problems, int Revision)> RevisionAsync(
        LabContext context, DeterminationState state, string gradeCode, Actor actor, Request request, CancellationToken cancel)
    {
        var next = state.Current.Revision + 1;
        var readings = request.Readings ?? state.Current.Readings;
        var handling = Handling(request.Handling, state.Current.Handling);
        var kind = await context.Grades.Where(g => g.Code == gradeCode).Select(g => g.Kind).FirstAsync(cancel);
        var test = state.TestId is null ? null : await context.AssignedTests.AsNoTracking().FirstAsync(t => t.Id == state.TestId, cancel);
        _ = TestMethods.TryFind(state.Method, out var method);
        if (ReadingsNeeded.Check(method, readings).ToList() is { Count: > 0 } missing)
            return (missing, next);
        var instrument = await context.Instruments.AsNoTracking().FirstAsync(i => i.Code == state.Instrument, cancel);
        if (!request.SetAside && VerifiedRange.Check(instrument, readings.TotalPressure!) is { } outside)
            return ([outside], next);
        var evaluated = DeterminationEvaluation.Evaluate(new DeterminationInput(
            state.Method, test?.Authorities ?? [], kind, state.ContainerKind, state.ContainerMillilitres, readings, handling,
            state.OwnCorrelation ?? await OwnCorrelations.OnAsync(context, method, await DayAsync(context, state.MeasuredAt, cancel), cancel)));
        // What is set aside may well be what the method rejects; what counts may not.
        if (!request.SetAside && ReportDetermination.BlockingFindings(evaluated) is { Count: > 0 } blocking)
            return (blocking, next);
        context.DeterminationRevisions.Add(new DeterminationRevision
        {
            Id = Guid.NewGuid(),
            DeterminationId = state.Id,
            Revision = next,
            At = clock.GetUtcNow(),
            By = actor.Id,
            ByName = actor.Name,
            Reason = request.Reason!.Trim(),
            SetAside = request.SetAside,
            AssignableCause = request.SetAside ? request.AssignableCause!.Trim() : null,
            Readings = readings,
            Handling = handling,
            Findings = evaluated.Findings,
        });
        context.Results.AddRange(evaluated.Results.Select(r => StoredDetermination.Store(r, state.Id, next)));
        return ([], next);
    }

    private static async Task<DateOnly> DayAsync(LabContext context, DateTimeOffset at, CancellationToken cancel) =>
        LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel)).Day(at);

    // What was confirmed at the bench and how full the container was do not go away by correcting something else.
    private static HandlingAsTyped Handling(HandlingAsTyped? corrected, HandlingAsTyped stored) =>
        corrected is null ? stored
        : corrected with
        {
            FillPercent = corrected.FillPercent ?? stored.FillPercent,
            Confirmed = corrected.Confirmed.Count > 0 ? corrected.Confirmed : stored.Confirmed,
        };

    private async Task AfterAsync(LabContext context, DeterminationState state, Guid? batchId, string cause, CancellationToken cancel)
    {
        var test = state.TestId is null ? null : await context.AssignedTests.FirstAsync(t => t.Id == state.TestId, cancel);
        await TestProgress.UpdateAsync(context, test, await PrecisionInForce.LoadAsync(context, cancel), cancel);
        await ReviewMarks.MarkAsync(context, batchId is { } id ? [id] : [], cause, clock.GetUtcNow(), cancel);
    }
}
