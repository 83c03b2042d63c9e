using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Who may sign a batch's release: with the right, and without a hand in any of its results; those on call first.</summary>
public sealed class ReadSigners(Func<LabContext> open, TimeProvider clock)
{
    public async Task<IReadOnlyList<Signer>> Run(Evidence evidence, CancellationToken cancel = default)
    {
        await using var context = open();
        var hands = EvidenceRules.Hands(evidence);
        return [.. (await Signers.LoadAsync(context, clock.GetUtcNow(), cancel)).Where(s => !hands.Contains(s.Id))];
    }
}
