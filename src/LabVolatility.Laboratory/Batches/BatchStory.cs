using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Who did what to a batch, from its decisions, marks, amendments, certificates, hand-over notes and records.</summary>
internal static class BatchStory
{
    public static async Task<IReadOnlyList<BatchEvent>> LoadAsync(
        LabContext context, Batch batch, AssessBatch.Assessed assessed, CancellationToken cancel)
    {
        IEnumerable<BatchEvent>[] parts =
        [
            assessed.Decisions.Select(Of),
            await MarksAsync(context, assessed, cancel),
            await AmendmentsAsync(context, assessed.Evidence, cancel),
            assessed.Evidence.Steps.Select(Of),
            assessed.Evidence.Parties.Select(Of),
            await WithdrawalsAsync(context, assessed.Evidence, cancel),
            await CertificatesAsync(context, batch, cancel),
            await CargoesAsync(context, batch, cancel),
            await HandoversAsync(context, batch, cancel),
            await ChangesAsync(context, batch, cancel),
        ];
        return [.. parts.SelectMany(p => p).OrderByDescending(e => e.At)];
    }

    private static BatchEvent Of(Decision decision) => new(
        decision.At,
        decision.Kind == DecisionKind.Withdraw ? "decision withdrawn" : DecisionWords.State(decision.Kind),
        $"{decision.PersonName}, {decision.PersonRoles}", decision.Meaning, decision.Reason, decision.Kind);

    private static BatchEvent Of(StepEvidence step) => new(
        step.At, $"step {step.Place} of {step.Branch.Count} taken: {RetestWords.Of(step.Branch[step.Place - 1])}", step.By,
        string.Join(", ", step.Samples), step.Reason);

    private static BatchEvent Of(PartyEvidence party) => new(
        party.EnteredAt, $"result of {party.Party} entered", party.EnteredBy, $"{party.Quantity} {party.Typed} by {party.Method}.");

    private static async Task<IEnumerable<BatchEvent>> WithdrawalsAsync(LabContext context, Evidence evidence, CancellationToken cancel)
    {
        var parties = evidence.Parties.Where(p => p.Withdrawn is not null).ToDictionary(p => p.Id, p => p.Party);
        var ids = parties.Keys.ToList();
        var withdrawals = ids.Count == 0 ? [] : await context.PartyWithdrawals.AsNoTracking().Where(w => ids.Contains(w.PartyResultId)).ToListAsync(cancel);
        return withdrawals.Select(w => new BatchEvent(w.At, $"result of {parties[w.PartyResultId]} withdrawn", w.ByName, Why: w.Reason));
    }

    private static async Task<IEnumerable<BatchEvent>> MarksAsync(LabContext context, AssessBatch.Assessed assessed, CancellationToken cancel)
    {
        var decisions = assessed.Decisions.Select(d => d.Id).ToList();
        var marks = decisions.Count == 0 ? [] : await context.ReviewMarks.AsNoTracking().Where(m => decisions.Contains(m.DecisionId)).ToListAsync(cancel);
        return marks.Select(m => new BatchEvent(m.At, "decision marked for review", null, Capital(m.Cause), Review: true));
    }

    private static async Task<IEnumerable<BatchEvent>> AmendmentsAsync(LabContext context, Evidence evidence, CancellationToken cancel)
    {
        var samples = evidence.Samples.SelectMany(s => s.Determinations, (s, d) => (Sample: s.Number, Determination: d))
            .Where(x => x.Determination.Revision > 1).ToDictionary(x => x.Determination.Id);
        var ids = samples.Keys.ToList();
        var revisions = ids.Count == 0 ? [] : await context.DeterminationRevisions.AsNoTracking()
            .Where(r => ids.Contains(r.DeterminationId) && r.Revision > 1)
            .Select(r => new { r.DeterminationId, r.At, r.ByName, r.Reason, r.SetAside, r.AssignableCause }).ToListAsync(cancel);
        return revisions.Select(r => new BatchEvent(
            r.At,
            $"result of sample {samples[r.DeterminationId].Sample}, container {samples[r.DeterminationId].Determination.Container} {(r.SetAside ? "set aside" : "amended")}",
            r.ByName, r.AssignableCause, r.Reason));
    }

    private static async Task<IEnumerable<BatchEvent>> CertificatesAsync(LabContext context, Batch batch, CancellationToken cancel)
    {
        var issued = await context.Certificates.AsNoTracking().Where(c => c.BatchId == batch.Id)
            .Join(context.People, c => c.IssuedBy, p => p.Id, (c, p) => new { c.Number, c.Revision, c.IssuedAt, c.ReplacesReason, p.FullName })
            .ToListAsync(cancel);
        return issued.Select(c => new BatchEvent(c.IssuedAt, $"certificate {c.Number}, revision {c.Revision} issued", c.FullName, Why: c.ReplacesReason));
    }

    private static async Task<IEnumerable<BatchEvent>> CargoesAsync(LabContext context, Batch batch, CancellationToken cancel)
    {
        var issued = await context.Certificates.AsNoTracking()
            .Where(c => context.CargoTanks.Any(t => t.CertificateId == c.Id && t.BatchId == batch.Id))
            .Select(c => new
            {
                c.Number,
                c.Revision,
                c.IssuedAt,
                c.ReplacesReason,
                context.People.First(p => p.Id == c.IssuedBy).FullName,
                context.Cargoes.First(g => g.CertificateId == c.Id).Ship,
            }).ToListAsync(cancel);
        return issued.Select(c => new BatchEvent(
            c.IssuedAt, $"cargo certificate {c.Number}, revision {c.Revision} issued", c.FullName, $"For {c.Ship}.", c.ReplacesReason));
    }

    private static async Task<IEnumerable<BatchEvent>> HandoversAsync(LabContext context, Batch batch, CancellationToken cancel)
    {
        var notes = await context.HandoverNotes.AsNoTracking().Include(n => n.Taken).Where(n => n.BatchId == batch.Id).ToListAsync(cancel);
        return
        [
            .. notes.Select(n => new BatchEvent(n.At, "handed over", n.ByName, n.Text)),
            .. notes.Select(n => n.Taken).OfType<HandoverTaken>().Select(t => new BatchEvent(t.At, "hand-over note taken", t.ByName)),
        ];
    }

    private static async Task<IEnumerable<BatchEvent>> ChangesAsync(LabContext context, Batch batch, CancellationToken cancel)
    {
        var id = batch.Id.ToString();
        var records = await context.AuditRecords.AsNoTracking().Where(r => r.Subject == "batch" && r.SubjectId == id)
            .Select(r => new { r.At, r.Actor, New = r.Before == null, r.Reason }).ToListAsync(cancel);
        return records.Select(r => new BatchEvent(r.At, r.New ? "batch registered" : "batch changed", r.Actor, Why: r.Reason));
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..].TrimEnd('.') + ".";
}
