using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Demo;

/// <summary>Finds each case that the demo is there to show.</summary>
internal static class DemoCases
{
    public static async Task<IReadOnlyList<AssessBatch.Assessed>> Batches(TestLaboratory laboratory, CancellationToken cancel)
    {
        await using var lab = laboratory.Open();
        var evidence = await BatchAssessing.WorkOutAllAsync(lab, await lab.Batches.Select(b => b.Id).ToListAsync(cancel), cancel);
        var decisions = (await lab.Decisions.OrderBy(d => d.Sequence).ToListAsync(cancel)).ToLookup(d => d.BatchId);
        var marks = (await lab.ReviewMarks.ToListAsync(cancel)).ToLookup(m => m.DecisionId);
        return [.. evidence.OrderBy(e => e.Value.Batch).Select(e => Assessed(e.Value, [.. decisions[e.Key]], marks))];
    }

    public static async Task AssertAllThere(TestLaboratory laboratory, int days, CancellationToken cancel)
    {
        var batches = await Batches(laboratory, cancel);
        Assert.Equal(days + 6, batches.Count);
        AssertPast(batches);
        await AssertNow(laboratory, [.. batches.Where(b => b.InForce is null)], cancel);
        await AssertTestersAndReference(laboratory, cancel);
    }

    private static AssessBatch.Assessed Assessed(Evidence evidence, List<Decision> decisions, ILookup<Guid, ReviewMark> marks)
    {
        var own = decisions.LastOrDefault() is { } last ? marks[last.Id].ToList() : [];
        return new(
            evidence, EvidenceText.Hash(EvidenceText.Of(evidence)),
            decisions.LastOrDefault() is { } inForce ? DecisionInForce.Of(inForce, own.Count > 0) : null, decisions, own);
    }

    private static void AssertPast(IReadOnlyList<AssessBatch.Assessed> batches)
    {
        var released = batches.Where(b => b.InForce?.Kind == DecisionKind.Release).ToList();
        Assert.Single(released, b => b.Evidence.Samples.Any(s => s.Determinations.Count == 4));
        Assert.Single(released, b => b is { InForce.ForReview: true, ReviewMarks.Count: > 0 });
        Assert.Single(released, b => b.Evidence.Samples.Any(s => s.Void is not null) && b.Evidence.Samples.Any(s => s.Void is null));
        Assert.Contains(released, b => b.Evidence.Levels.Any(l => l.Agree == true));
        Assert.Single(batches, b => b.InForce?.Kind == DecisionKind.Withdraw);
        Assert.Single(batches, b => b.InForce?.Kind == DecisionKind.Reject);
        Assert.Single(batches, b => b.InForce?.Kind == DecisionKind.Concession);
        Assert.Single(batches, b => b.InForce?.Kind == DecisionKind.Hold && b.Evidence.Levels.Any(l => l.Agree == false));
        Assert.Single(batches.SelectMany(b => b.Evidence.Samples), s => s.State == SampleState.Refused);
    }

    private static async Task AssertNow(TestLaboratory laboratory, List<AssessBatch.Assessed> open, CancellationToken cancel)
    {
        await using var lab = laboratory.Open();
        var now = laboratory.Clock.GetUtcNow();
        var waiting = await lab.AssignedTests.Where(t => t.State == TestState.Waiting).ToListAsync(cancel);
        Assert.Single(open, b => b.Evidence.Outcome == Outcome.NotDecided && !b.Evidence.Samples.Any(IsHazy));
        Assert.Single(open, b => b.Evidence.Outcome == Outcome.NotDecided && b.Evidence.Samples.Any(IsHazy));
        Assert.Single(open, b => b.Evidence.Blocks.Count == 0 && b.Evidence.Outcome == Outcome.Conforms);
        Assert.Single(open.SelectMany(b => b.Evidence.Samples).SelectMany(s => s.Determinations), d => d.MeasurerId is null);
        Assert.Single(open.SelectMany(b => b.Evidence.Samples), s => s.State == SampleState.Announced);
        Assert.Single(open, b => b.Evidence.Parties.Any(p => p.Comparison?.Agree == false));
        Assert.Single(await lab.HandoverNotes.Where(n => !lab.HandoverTakings.Any(t => t.NoteId == n.Id)).ToListAsync(cancel));
        Assert.Single(await lab.Cargoes.ToListAsync(cancel));
        Assert.Single(await lab.OnCallTurns.ToListAsync(cancel), t => t.From <= now && t.Until > now);
        Assert.Single(waiting, t => t.Wanted == 2);
        Assert.All(waiting, t => Assert.InRange(t.DueAt!.Value, now, now.AddHours(5)));
        Assert.Equal(["VP-1: True", "VP-2: False", "VP-3: True"], await Ready(laboratory, cancel));
    }

    private static async Task AssertTestersAndReference(TestLaboratory laboratory, CancellationToken cancel)
    {
        await using var lab = laboratory.Open();
        var acts = await lab.AuditRecords.Select(r => r.Action).Distinct().ToListAsync(cancel);
        Assert.Single(await lab.Verifications.Where(v => !v.InBand).ToListAsync(cancel));
        Assert.Contains("take instrument out of service", acts);
        Assert.Contains("put instrument back in service", acts);
        Assert.All(await lab.PrecisionEntries.ToListAsync(cancel), p => Assert.NotEqual(p.DraftedBy, p.ApprovedBy));
        Assert.All(await lab.LaboratoryLimits.ToListAsync(cancel), l => Assert.NotEqual(l.DraftedBy, l.ApprovedBy));
        Assert.Equal([Standing.Contract, Standing.Internal], await lab.LaboratoryLimits.OrderBy(l => l.Key).Select(l => l.Standing).ToListAsync(cancel));
        Assert.InRange(await lab.Certificates.CountAsync(cancel), 40, 60);
    }

    private static bool IsHazy(SampleEvidence sample) => sample.Determinations.Any(d => d.Results.Any(r => r.Suffix == "H"));

    private static async Task<List<string>> Ready(TestLaboratory laboratory, CancellationToken cancel)
    {
        await using var lab = laboratory.Open();
        var day = LaboratoryTime.Of(await lab.Settings.SingleAsync(cancel)).Day(laboratory.Clock.GetUtcNow());
        var checks = await lab.Verifications.ToListAsync(cancel);
        var testers = await lab.Instruments.OrderBy(i => i.Code).ToListAsync(cancel);
        return [.. testers.Select(t => $"{t.Code}: {Readiness.On(t, checks.Where(c => c.InstrumentCode == t.Code), day).Ready}")];
    }
}
