using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>Loads batches for a cargo certificate: from the frozen evidence of the release in force, nothing else.</summary>
internal static class CargoBatches
{
    public static async Task<IReadOnlyDictionary<string, CargoBatch>> LoadAsync(
        LabContext context, IReadOnlyList<string> numbers, CancellationToken cancel)
    {
        var batches = await context.Batches.AsNoTracking().Where(b => numbers.Contains(b.Number)).ToListAsync(cancel);
        var ids = batches.Select(b => b.Id).ToList();
        var decisions = await context.Decisions.AsNoTracking()
            .Where(d => ids.Contains(d.BatchId) && !context.Decisions.Any(l => l.BatchId == d.BatchId && l.Sequence > d.Sequence))
            .Select(d => new { Decision = d, Marked = context.ReviewMarks.Any(m => m.DecisionId == d.Id) }).ToListAsync(cancel);
        var assessed = decisions.Select(d => d.Decision.AssessmentId).ToList();
        var evidence = await context.Assessments.AsNoTracking().Where(a => assessed.Contains(a.Id)).ToDictionaryAsync(a => a.Id, a => a.Evidence, cancel);
        return batches.ToDictionary(b => b.Number, b =>
        {
            var last = decisions.Find(d => d.Decision.BatchId == b.Id);
            return Of(b, last?.Decision, last?.Marked == true,
                last?.Decision.AssessmentId is { } id && evidence.TryGetValue(id, out var text) ? EvidenceText.Read(text) : null);
        });
    }

    private static CargoBatch Of(Batch batch, Decision? decision, bool marked, Evidence? evidence)
    {
        var inForce = decision is null ? null : DecisionInForce.Of(decision, marked);
        if (decision?.Kind is not (DecisionKind.Release or DecisionKind.Concession) || evidence is null)
            return new CargoBatch(batch, inForce, null, $"Batch {batch.Number} has no release in force.");
        if (marked)
            return new CargoBatch(batch, inForce, null, $"The release of batch {batch.Number} is marked for review: release it anew first.");
        var line = CargoTankText.Of(batch.TankCode ?? "", evidence, decision);
        return new CargoBatch(
            batch, inForce, line, line is null ? $"Batch {batch.Number} has no vapour pressure that was held against a limit." : null)
        { Hands = EvidenceRules.Hands(evidence) };
    }
}
