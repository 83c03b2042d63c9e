using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Today;
using LabVolatility.Web.Batches;
using LabVolatility.Web.Bench;
using LabVolatility.Web.Samples;

namespace LabVolatility.Web.Today;

/// <summary>The first numbers of the day, by the work that a person has.</summary>
public static class TodayFigures
{
    public static IReadOnlyList<TodayFigure> Of(TodaySheet sheet, DateTimeOffset now) =>
    [
        .. sheet.Waiting is { } waiting ? OfSlot(waiting, now) : [],
        .. sheet is { Bench: { } bench, Waiting: null } ? OfBench(bench, now) : [],
        .. sheet.Margins is { } margins ? OfBlending(margins) : [],
        .. sheet.Reference is { } reference ? OfReference(reference, sheet) : [],
        .. sheet.Seasons is [var next, ..] ? [OfSeason(next)] : Array.Empty<TodayFigure>(),
        .. sheet.Accounts is { } accounts ? OfAccounts(accounts) : [],
        .. sheet.Trail is { } trail ? OfTrail(trail, sheet) : [],
    ];

    private static IEnumerable<TodayFigure> OfSlot(IReadOnlyList<WaitingBatch> waiting, DateTimeOffset now)
    {
        var next = waiting.FirstOrDefault(w => w.Batch.NeededBy >= now) ?? (waiting is [var first, ..] ? first : null);
        if (next is null)
        {
            yield return new TodayFigure("Batches waiting", "none", "Nothing waits for a decision.", "/batches");
            yield break;
        }

        var address = BatchAddress.Of(next.Batch.Number);
        var needed = next.Batch.NeededBy;
        yield return new TodayFigure(
            "To the slot", needed is { } slot ? SampleWords.Until(slot, now) : "no slot",
            $"batch {next.Batch.Number}, {next.Batch.GradeCode}", address, needed < now);
        yield return next.Binding is { } limit
            ? new TodayFigure("Margin beside R", $"{BatchWords.Margin(limit)} {limit.Unit}", $"R {BatchWords.Reproducibility(limit)}; {BatchWords.Of(limit)}", address, limit.Margin < 0)
            : new TodayFigure("Margin beside R", "no value", "nothing measured that counts", address);
        yield return OfResult(next, now) with { Address = address };
        yield return new TodayFigure("Sealed bottles left", $"{next.SealedLeft}", "the retained portion among them", address);
    }

    private static TodayFigure OfResult(WaitingBatch wait, DateTimeOffset now) => wait switch
    {
        { LastResultExpected: { } at } => new(
            "To the result", at <= now ? "any moment" : SampleWords.Until(at, now), "by what its method usually takes here", IsLate: at > wait.Batch.NeededBy),
        { LastResultDue: { } due } => new(
            "To the result", SampleWords.Until(due, now), "its deadline: too few results for a usual time", IsLate: due > wait.Batch.NeededBy),
        _ => new("To the result", "no test waits", "all that was asked for is reported"),
    };

    private static IEnumerable<TodayFigure> OfBench(BenchDay bench, DateTimeOffset now)
    {
        var next = bench.Waiting is [var first, ..] ? first : null;
        yield return new TodayFigure(
            "Bottles due", $"{bench.Waiting.Count}",
            next is null ? "no test waits" : next.DueAt is { } due ? $"the first {SampleWords.Until(due, now)}: {next.SampleNumber}" : $"no deadline: {next.SampleNumber}",
            next is null ? "/bench" : BenchAddress.Of(next.SampleNumber, next.Method), next?.DueAt < now);
        foreach (var line in bench.Instruments)
            yield return OfTester(line);
    }

    private static TodayFigure OfTester(InstrumentLine line) => new(
        $"{line.Instrument.Code}, fluid from mid-band",
        line.Readiness.VerifiedAt is null ? "none today" : InstrumentLine.DeviationKpa(line.Last) is { } deviation ? $"{Signed(deviation, 2)} kPa" : "no reading",
        line.Readiness.Ready ? "ready" : "not ready", $"/instruments/{Uri.EscapeDataString(line.Instrument.Code)}", !line.Readiness.Ready);

    // Margins in unlike units make no mean: each unit has its own.
    private static IEnumerable<TodayFigure> OfBlending(IReadOnlyList<BatchMargin> margins)
    {
        foreach (var unit in margins.Where(m => m.Binding?.Margin is not null).GroupBy(m => m.Binding!.Unit))
        {
            yield return new TodayFigure(
                "Giveaway to the limit", $"{Signed(unit.Average(m => m.Binding!.Margin!.Value), 2)} {unit.Key}",
                unit.Count() == 1 ? "one of the last ten batches" : $"mean of {unit.Count()} of the last ten batches");
        }

        yield return new TodayFigure("Predicted less measured", "no forecast", "no forecast of a blend has been entered");
    }

    private static IEnumerable<TodayFigure> OfReference(ReferenceWork work, TodaySheet sheet)
    {
        var mine = work.Drafts.Count(d => !d.Own);
        yield return new TodayFigure("Drafts to approve", $"{mine}", work.Drafts.Count == mine ? "of reference data" : $"{work.Drafts.Count - mine} of your own wait for somebody else");
        yield return new TodayFigure("Decisions to review", $"{sheet.ForReview?.Count ?? 0}", "their evidence changed after the signature", IsLate: sheet.ForReview is { Count: > 0 });
        if (sheet.Bench is { } bench)
        {
            var away = bench.Instruments.Where(i => !i.Readiness.Ready).Select(i => i.Instrument.Code).ToList();
            yield return new TodayFigure("Testers not ready", $"{away.Count}", away.Count == 0 ? "all are ready" : string.Join(", ", away), "/instruments", away.Count > 0);
        }
    }

    private static TodayFigure OfSeason(SeasonChange change)
    {
        var unfit = change.Tanks.Count(t => !t.IsFit);
        return new TodayFigure(
            "To other limits", change.Days == 1 ? "1 day" : $"{change.Days} days",
            $"{change.Area}: " + (change.Tanks.Count == 0 ? "no tank goes there now" : unfit == 0 ? "all its tanks are fit" : $"{unfit} of {change.Tanks.Count} tanks not yet fit"));
    }

    private static IEnumerable<TodayFigure> OfAccounts(AccountWork work)
    {
        yield return new TodayFigure("First sign-in due", $"{work.FirstSignInDue.Count}", Names(work.FirstSignInDue, "everybody has a password of their own"), "/setup/people");
        yield return new TodayFigure("Locked out", $"{work.LockedOut.Count}", Names(work.LockedOut, "nobody"), "/setup/people", work.LockedOut.Count > 0);
        yield return new TodayFigure(
            "Keys that end within 30 days", $"{work.KeysEnding.Count}", Names([.. work.KeysEnding.Select(k => k.Name)], "none"), "/setup/keys", work.KeysEnding.Count > 0);
    }

    private static IEnumerable<TodayFigure> OfTrail(TrailHead trail, TodaySheet sheet)
    {
        yield return new TodayFigure("Audit records", $"{trail.Records}", $"{trail.Since} of them in this shift", "/records");
        yield return new TodayFigure("Decisions to review", $"{sheet.ForReview?.Count ?? 0}", "their evidence changed after the signature");
    }

    private static string Names(IReadOnlyList<string> names, string none) => names.Count == 0 ? none : string.Join(", ", names);

    private static string Signed(decimal value, int digits) => (value > 0 ? "+" : "") + Rounding.Text(value, digits).Replace('-', '\u2212');
}
