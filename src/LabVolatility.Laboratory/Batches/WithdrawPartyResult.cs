using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Withdraws another party's result with the reason: it stays readable and is no longer compared.</summary>
public sealed class WithdrawPartyResult(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<Guid>> Run(Actor actor, Guid resultId, string? reason, CancellationToken cancel = default)
    {
        if (actor.IsKey || actor.Lacks(Right.Decide, "Withdrawing another party's result") is not null)
            return Answer<Guid>.Forbidden($"Withdrawing another party's result is for the {Rights.HoldersText(Right.Decide)}.");
        if (string.IsNullOrWhiteSpace(reason))
            return Answer<Guid>.Invalid(new Problem("/reason", "Say why it is withdrawn: the reason stays with the record."));
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var result = await context.PartyResults.AsNoTracking().FirstOrDefaultAsync(r => r.Id == resultId, cancel);
        if (result is null)
            return Answer<Guid>.NotFound("There is no such result.");
        if (await context.PartyWithdrawals.AsNoTracking().FirstOrDefaultAsync(w => w.PartyResultId == resultId, cancel) is { } earlier)
            return Answer<Guid>.Conflict($"{earlier.ByName} has withdrawn it already: {earlier.Reason}");
        var now = clock.GetUtcNow();
        context.PartyWithdrawals.Add(new PartyWithdrawal
        {
            PartyResultId = resultId, By = actor.Id, ByName = actor.Name, At = now, Reason = reason.Trim(),
        });
        context.Act = actor.Does("withdraw another party's result", reason.Trim());
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(context, [result.BatchId], $"a result of {result.Party} was withdrawn: {reason.Trim()}", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(resultId);
    }
}
