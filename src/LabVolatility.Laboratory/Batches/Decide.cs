using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Signs a decision on a batch: one wins, the others are told who decided what.</summary>
public sealed class Decide(Func<LabContext> open, TimeProvider clock, ISignature signature)
{
    private const string CommandName = "decide";

    public async Task<Answer<DecisionInForce>> Run(Actor actor, DecisionRequest request, CancellationToken cancel = default)
    {
        if (DecisionRights.Check(actor, request.Kind) is { } lacking)
            return Answer<DecisionInForce>.Forbidden(lacking);
        if (DecisionProblems(request) is { Count: > 0 } problems)
            return Answer<DecisionInForce>.Invalid(problems);
        if (!await signature.IsRightAsync(actor, request.Password, cancel))
            return Answer<DecisionInForce>.Refused(new Problem("/password", "The password is wrong: nothing was signed.", ISignature.Rule));

        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<DecisionInForce>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } signed)
            return Answer<DecisionInForce>.Repeated(await SignedAsync(context, Guid.Parse(signed), cancel));
        var batch = await context.Batches.AsNoTracking().FirstOrDefaultAsync(b => b.Number == request.Batch, cancel);
        if (batch is null)
            return Answer<DecisionInForce>.NotFound($"There is no batch {request.Batch}.");
        var inForce = await InForceAsync(context, request.Batch, cancel);
        if ((inForce?.Sequence ?? 0) != request.ExpectedSequence)
            return Beaten(request, inForce);
        if (OrderOfDecisions.Check(inForce, request.Kind) is { } order)
            return Answer<DecisionInForce>.Refused(order);

        var evidence = await BatchAssessing.WorkOutAsync(context, batch.Id, cancel);
        if (EvidenceRules.Check(evidence, request, actor) is { Count: > 0 } refusals)
            return Answer<DecisionInForce>.Refused(refusals);
        var decision = Sign(context, batch.Id, actor, request, evidence);
        try
        {
            await context.SaveChangesAsync(cancel);
            await transaction.CommitAsync(cancel);
        }
        catch (DbUpdateException e) when (context.IsUniqueViolation(e))
        {
            await transaction.RollbackAsync(cancel);
            await using var after = open();
            return Beaten(request, await InForceAsync(after, request.Batch, cancel));
        }
        catch (DbUpdateException e) when (DatabaseRefusal.Of(context, e) is { } refusal)
        {
            return Answer<DecisionInForce>.Refused(refusal);
        }

        return Answer<DecisionInForce>.Done(DecisionInForce.Of(decision, false));
    }

    private static Answer<DecisionInForce> Beaten(DecisionRequest request, DecisionInForce? inForce) =>
        Answer<DecisionInForce>.Conflict(
            inForce is null
                ? $"Batch {request.Batch} has no decision any more: look at it again."
                : $"{inForce.PersonName} was first: batch {request.Batch} is {DecisionWords.State(inForce.Kind)} since {inForce.At.UtcDateTime:yyyy-MM-dd HH:mm} UTC.",
            inForce);

    private static async Task<DecisionInForce> SignedAsync(LabContext context, Guid decision, CancellationToken cancel) =>
        DecisionInForce.Of(
            await context.Decisions.AsNoTracking().FirstAsync(d => d.Id == decision, cancel),
            await context.ReviewMarks.AnyAsync(m => m.DecisionId == decision, cancel));

    internal static async Task<DecisionInForce?> InForceAsync(LabContext context, string batch, CancellationToken cancel)
    {
        var row = await context.Decisions.AsNoTracking()
            .Where(d => context.Batches.Any(b => b.Id == d.BatchId && b.Number == batch))
            .OrderByDescending(d => d.Sequence)
            .Select(d => new { Decision = d, Marked = context.ReviewMarks.Any(m => m.DecisionId == d.Id) })
            .FirstOrDefaultAsync(cancel);
        return row is null ? null : DecisionInForce.Of(row.Decision, row.Marked);
    }

    private Decision Sign(LabContext context, Guid batchId, Actor actor, DecisionRequest request, Evidence evidence)
    {
        var now = clock.GetUtcNow();
        var frozen = EvidenceText.Of(evidence);
        var assessment = new FrozenAssessment
        {
            Id = Guid.CreateVersion7(now),
            BatchId = batchId,
            At = now,
            By = actor.Id,
            Outcome = evidence.Outcome,
            FailsLegalLimit = evidence.FailsLegalLimit,
            Evidence = frozen,
            EvidenceHash = EvidenceText.Hash(frozen),
            Build = Build.Name,
        };
        var decision = new Decision
        {
            Id = Guid.CreateVersion7(now),
            BatchId = batchId,
            Sequence = request.ExpectedSequence + 1,
            Kind = request.Kind,
            AssessmentId = assessment.Id,
            EvidenceHash = assessment.EvidenceHash,
            PersonId = actor.Id,
            PersonName = actor.Name,
            PersonRoles = RoleNames.Text(actor.Roles),
            Meaning = DecisionWords.Meaning(request.Kind, request.Batch),
            Reason = string.IsNullOrWhiteSpace(request.Reason) ? null : request.Reason.Trim(),
            At = now,
        };
        context.Assessments.Add(assessment);
        context.Decisions.Add(decision);
        if (request.Handover is { } handover)
            context.HandoverNotes.Add(handover.Note(batchId, decision.Id, actor, now));
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = decision.Id.ToString(), At = now });
        context.Act = actor.Does(DecisionWords.Act(request.Kind), decision.Reason);
        return decision;
    }

    private static List<Problem> DecisionProblems(DecisionRequest request)
    {
        var problems = new List<Problem>();
        if (request.Kind != DecisionKind.Release && string.IsNullOrWhiteSpace(request.Reason))
            problems.Add(new Problem("/reason", $"Say why the batch is {DecisionWords.State(request.Kind)}."));
        if (string.IsNullOrEmpty(request.Password))
            problems.Add(new Problem("/password", "Type your password: it is your signature."));
        problems.AddRange(request.Handover?.Problems() ?? []);
        return problems;
    }
}
