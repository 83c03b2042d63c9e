using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>From the evidence, the tree agreed beforehand and the steps taken: the next step, and why.</summary>
public static class WhatComesNext
{
    /// <returns>Null where nothing calls for a step.</returns>
    /// <param name="evidence">The batch as it stands, with the steps taken.</param>
    /// <param name="tree">The tree of its grade.</param>
    /// <param name="bench">How the tests of its samples stand.</param>
    /// <param name="inForce">The decision in force; a release or a rejection ends the matter until it is marked for review.</param>
    public static RetestAdvice? Of(Evidence evidence, RetestTree tree, IReadOnlyList<BenchStanding> bench, DecisionInForce? inForce)
    {
        if (inForce is { Kind: DecisionKind.Release or DecisionKind.Concession, ForReview: false } or { Kind: DecisionKind.Reject })
            return null;
        return RetestFindings.Of(evidence, bench).FirstOrDefault() is { } found
            ? Advise(found, tree, evidence, bench, inForce)
            : evidence.Steps.Select(s => UnderWay(s, evidence, bench, tree)).LastOrDefault(a => a is not null);
    }

    private static RetestAdvice Advise(
        RetestFinding found, RetestTree tree, Evidence evidence, IReadOnlyList<BenchStanding> bench, DecisionInForce? inForce)
    {
        var taken = evidence.Steps.Where(s => s.Occasion == found.Occasion && s.Subject == found.Subject).OrderBy(s => s.Place).LastOrDefault();
        if (taken is not null && UnderWay(taken, evidence, bench, tree) is { } underWay)
            return underWay;
        var branch = tree.For(found.Occasion).Places;
        var advice = Plain(found, branch, tree, "");
        var passed = new List<string>();
        for (var place = (taken?.Place ?? 0) + 1; place < branch.Count; place++)
        {
            var step = branch[place - 1];
            var test = found.Tests.FirstOrDefault(t => IsOpenTo(t, step, found));
            if (step.Kind != RetestKind.MoreContainers || test is not null)
                return Step(advice with { Place = place, Kind = step.Kind, Passed = passed }, step, test);
            passed.Add($"Step {place}, {RetestWords.Of(step)}: {WhyNot(found)}");
        }

        return Ended(advice with { Place = branch.Count, Passed = passed }, inForce);
    }

    private static bool IsOpenTo(BenchStanding test, RetestStep step, RetestFinding found) =>
        test.Offered >= step.Containers && (found.Occasion != RetestOccasion.DuplicatesDiffer || test.Counting + step.Containers <= test.Most);

    private static string WhyNot(RetestFinding found) =>
        found.Tests.Count == 0 ? "there is no test to carry on."
        : found.Occasion == RetestOccasion.DuplicatesDiffer && found.Tests[0].Counting >= found.Tests[0].Most
            ? $"the {found.Tests[0].Most} results in all that the rule asks for are made."
            : "not enough sealed containers are left beside the retained portion.";

    private static RetestAdvice Step(RetestAdvice advice, RetestStep step, BenchStanding? test)
    {
        var words = Words(step, advice.Samples, test, $"({Count(advice.Place, advice.Branch)})");
        return step.Kind == RetestKind.MoreContainers
            ? advice with { Words = words, TestId = test!.TestId, Wanted = test.Counting + step.Containers, Samples = [test.Sample] }
            : advice with { Words = words };
    }

    private static string Words(RetestStep step, IReadOnlyList<string> samples, BenchStanding? test, string count) => step.Kind switch
    {
        RetestKind.MoreContainers when step.Containers == 1 && test!.Next is { } next => $"Open container {next} of sample {test.Sample} {count}.",
        RetestKind.MoreContainers => $"Open {step.Containers} more sealed containers of sample {test!.Sample} {count}.",
        RetestKind.Resample => $"Draw {string.Join(", ", samples)} again at the same level {count}.",
        RetestKind.MixAndResample => $"Circulate the tank, record it, then draw {string.Join(", ", samples)} again {count}.",
        _ => $"Ask a third laboratory, and enter its result here {count}.",
    };

    // A hold is a decision: it is signed, not taken as a step.
    private static RetestAdvice Ended(RetestAdvice advice, DecisionInForce? inForce) =>
        inForce is { Kind: DecisionKind.Hold } hold
            ? advice with { Words = $"On hold by {hold.PersonName}: the quality manager says how it goes on." }
            : advice with
            {
                Kind = RetestKind.HoldAndCall,
                Words = $"Hold the batch and call the quality manager ({Count(advice.Place, advice.Branch)}): the tree ends here.",
            };

    private static RetestAdvice Plain(RetestFinding found, IReadOnlyList<RetestStep> branch, RetestTree tree, string words) => new()
    {
        Occasion = found.Occasion, Subject = found.Subject, Found = found.Found, Words = words, Branch = branch, Samples = found.Samples,
        Status = tree.Status,
    };

    /// <summary>A step that was taken and is not done yet, in words; null where it is done.</summary>
    private static RetestAdvice? UnderWay(StepEvidence step, Evidence evidence, IReadOnlyList<BenchStanding> bench, RetestTree tree)
    {
        var words = step.Kind switch
        {
            RetestKind.MoreContainers => AtTheBench(step, bench),
            RetestKind.Resample or RetestKind.MixAndResample => OnTheWay(step, evidence, bench),
            RetestKind.ThirdLaboratory => evidence.Parties.Any(p => p.Kind == PartyKind.ThirdLaboratory && p.Withdrawn is null && p.EnteredAt >= step.At)
                ? null : "Waits for the third laboratory: enter its result when it comes",
            _ => null,
        };
        return words is null ? null : new RetestAdvice
        {
            Occasion = step.Occasion, Subject = step.Subject, Found = step.Found, Branch = step.Branch, Place = step.Place,
            Samples = step.Samples, Status = tree.Status, Words = $"{words} ({Count(step.Place, step.Branch)}, taken by {step.By}).",
        };
    }

    private static string? AtTheBench(StepEvidence step, IReadOnlyList<BenchStanding> bench) =>
        bench.FirstOrDefault(b => b.TestId == step.TestId && b.State == TestState.Waiting && b.Counting < step.Wanted) is { } test
            ? $"Sample {test.Sample} waits at the bench for {step.Wanted - test.Counting} more by {test.Method}"
            : null;

    private static string? OnTheWay(StepEvidence step, Evidence evidence, IReadOnlyList<BenchStanding> bench)
    {
        var awaited = evidence.Samples.Where(s => step.Samples.Contains(s.Number) && s.Void is null).ToList();
        if (awaited.Where(s => s.State == SampleState.Announced).Select(s => s.Number).ToList() is { Count: > 0 } announced)
            return $"Waits for {string.Join(", ", announced)} to be drawn and received";
        return bench.FirstOrDefault(b => b.State == TestState.Waiting && awaited.Exists(s => s.Number == b.Sample)) is { } test
            ? $"Sample {test.Sample} waits at the bench for {test.Method}"
            : null;
    }

    private static string Count(int place, IReadOnlyList<RetestStep> branch) => $"step {place} of {branch.Count}";
}
