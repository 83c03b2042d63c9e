using LabVolatility.Core.Assessment;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Holds what other parties reported beside ours; it informs, it never enters our mean.</summary>
internal sealed class PartyJudge(
    IReadOnlyList<AssessedSample> samples, IReadOnlyList<LevelEvidence> levels, IReadOnlyList<LimitEvidence> limits,
    IReadOnlyList<PrecisionStatement> precision, PartyAgreement agreed)
{
    public IReadOnlyList<PartyEvidence> Judge(IReadOnlyList<(PartyResult Result, PartyWithdrawal? Withdrawal)> results) =>
        [.. results.Select(r => Of(r.Result, r.Withdrawal))];

    private PartyEvidence Of(PartyResult r, PartyWithdrawal? withdrawal) => new()
    {
        Id = r.Id,
        Kind = r.Kind,
        Party = r.Party,
        Laboratory = r.Laboratory,
        Sample = r.SampleNumber,
        Quantity = r.Quantity,
        Correlation = r.Correlation,
        Method = r.Method,
        Edition = r.Edition,
        Typed = r.Typed,
        Unit = r.Unit,
        Count = r.Count,
        Hazy = r.Hazy,
        MeasuredOn = r.MeasuredOn,
        Reference = r.Reference,
        Seals = r.Seals,
        SealMatch = SealComparison.Of(r.Seals, samples.Where(s => r.SampleNumber is null || s.Sample.Number == r.SampleNumber)
            .SelectMany(s => s.Sample.Containers).Select(c => c.Seal)),
        EnteredBy = r.EnteredByName,
        EnteredAt = r.EnteredAt,
        Withdrawn = withdrawal is null ? null : $"withdrawn by {withdrawal.ByName}: {withdrawal.Reason}",
        Comparison = withdrawal is null ? Compare(r) : null,
    };

    private PartyComparison Compare(PartyResult theirs)
    {
        var like = limits.Where(l => l.Quantity == theirs.Quantity
            && LimitAnswer.CorrelationOf(l.Quantity, theirs.Method, l.Correlation) == theirs.Correlation).ToList();
        _ = PressureUnits.TryParse(theirs.Unit, out var typed);
        var unit = like.Count > 0 && PressureUnits.TryParse(like[0].Unit, out var ofLimit) ? ofLimit : typed;
        var ours = OurMean.For(theirs, unit, samples, levels);
        if (ours.Value is not { } mean)
            return Unjudged($"Can't be compared. {ours.Why}");
        var their = AbsolutePressure.From(theirs.Value, typed).In(unit);
        var fit = PrecisionLookup.FindCautious(ours.Results, theirs.Quantity, (mean + their) / 2m, unit, precision);
        var hazy = theirs.Hazy || ours.Results.Any(r => r.Hazy);
        var (r, bigR) = hazy ? (null, null) : (fit.Repeatability, fit.Reproducibility);
        var verdict = TwoLaboratories.Judge(
            new(mean, ours.Results.Count), new(their, theirs.Count), bigR, r, unit.Symbol());
        var comparison = Unjudged(Why(verdict, hazy, fit, bigR)) with
        {
            Agree = verdict.Agree,
            Ours = mean,
            OurCount = ours.Results.Count,
            Theirs = their,
            Unit = unit.Symbol(),
            Difference = verdict.Difference,
            Allowed = verdict.Allowed,
            Repeatability = r,
            Reproducibility = bigR,
            Next = Next(verdict.Agree),
            Arithmetic = verdict.Arithmetic,
        };
        comparison = comparison with { Why = comparison.Why + Editions(theirs, ours) };
        return agreed.Rule == PartyRule.AstmD3244 ? Assign(comparison, [.. like.Where(l => l.Unit == unit.Symbol())]) : comparison;
    }

    // The assigned test value asks for a difference of at most R, however many results stand behind the two values.
    private PartyComparison Assign(PartyComparison comparison, IReadOnlyList<LimitEvidence> like)
    {
        if (comparison.Reproducibility is not { } bigR)
            return comparison;
        var agree = comparison.Difference <= bigR;
        var judged = like.Where(l => l.EffectiveMinimum is not null || l.EffectiveMaximum is not null)
            .DistinctBy(l => (l.EffectiveMinimum, l.EffectiveMaximum, l.Digits))
            .Select(l => (Limit: l, Verdict: AssignedTestValue.Judge(new AssignedTestInput(
                comparison.Ours!.Value, comparison.Theirs!.Value, bigR, l.EffectiveMinimum, l.EffectiveMaximum, l.Digits,
                agreed.Probability, agreed.Comparison, l.Unit)))).ToList();
        var differ = $"They differ by {Rounding.Text(comparison.Difference!.Value, 2)} {comparison.Unit}; R is {Rounding.Text(bigR, 2)} {comparison.Unit}.";
        return comparison with
        {
            Agree = agree,
            Allowed = bigR,
            Next = Next(agree),
            Why = judged.Count > 0
                ? $"{differ} {string.Join(" ", judged.Select(j => j.Verdict.Why).Distinct())}"
                : $"{differ} No limit of this quantity is in force, so there is no acceptance limit.",
            Assigned = [.. judged.Select(j => new AssignedEvidence(j.Limit.Key, j.Limit.Area, j.Verdict.Value, j.Verdict.Accepted, j.Verdict.Why))],
            Arithmetic = [.. judged.SelectMany(j => j.Verdict.Arithmetic).Distinct()],
        };
    }

    private static string Why(TwoLaboratoryVerdict verdict, bool hazy, PrecisionFit fit, decimal? bigR) =>
        hazy ? $"{verdict.Why} A hazy sample has no precision."
        : bigR is null ? $"{verdict.Why} {fit.Why}"
        : verdict.Why;

    private static string Editions(PartyResult theirs, OurMean ours) =>
        theirs.Edition is { } edition && ours.Results.Select(r => r.Edition).Distinct().FirstOrDefault(e => e != edition) is { } other
            ? $" Their edition is {edition}, ours {other}: the precision is that of ours."
            : "";

    private static string Next(bool? agree) => agree switch
    {
        true => "Nothing more is asked for.",
        false => "Both recheck on their retained samples; still apart, a third laboratory tests and the outlier is dropped.",
        null => "Settle what is missing, then it is judged.",
    };

    private PartyComparison Unjudged(string why) => new()
    {
        Agree = null, Rule = agreed.Rule, Status = FactStatus.FromMemory, Why = why, Next = Next(null),
    };
}
