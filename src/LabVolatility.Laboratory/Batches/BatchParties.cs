using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Loads what other parties reported on batches, and the steps of the tree that were taken.</summary>
internal sealed class BatchParties
{
    private readonly ILookup<Guid, (PartyResult Result, PartyWithdrawal? Withdrawal)> _results;
    private readonly ILookup<Guid, StepTaken> _steps;

    private BatchParties(IEnumerable<(PartyResult Result, PartyWithdrawal? Withdrawal)> results, IEnumerable<StepTaken> steps) =>
        (_results, _steps) = (results.ToLookup(r => r.Result.BatchId), steps.ToLookup(s => s.BatchId));

    public static async Task<BatchParties> LoadAsync(LabContext context, IReadOnlyList<Guid> batches, CancellationToken cancel)
    {
        var results = await context.PartyResults.AsNoTracking().Where(r => batches.Contains(r.BatchId))
            .Select(r => new { Result = r, Withdrawal = context.PartyWithdrawals.FirstOrDefault(w => w.PartyResultId == r.Id) })
            .ToListAsync(cancel);
        var steps = await context.StepsTaken.AsNoTracking().Where(s => batches.Contains(s.BatchId)).ToListAsync(cancel);
        return new BatchParties(results.Select(r => (r.Result, r.Withdrawal)), steps);
    }

    /// <summary>In the order of entering.</summary>
    public IReadOnlyList<(PartyResult Result, PartyWithdrawal? Withdrawal)> Of(Guid batch) =>
        [.. _results[batch].OrderBy(r => r.Result.EnteredAt).ThenBy(r => r.Result.Id)];

    /// <summary>In the order of taking.</summary>
    public IReadOnlyList<StepEvidence> StepsOf(Guid batch) =>
    [
        .. _steps[batch].OrderBy(s => s.At).ThenBy(s => s.Place).ThenBy(s => s.Id).Select(s => new StepEvidence(
            s.Occasion, s.Subject, s.Place, s.Branch, s.Kind, s.TestId, s.Wanted, s.Samples, s.Found, s.Reason, s.ByName, s.At)),
    ];
}
