namespace LabVolatility.Laboratory.Limits;

/// <summary>The days that a version holds, both ends included; no last day: until another takes its place.</summary>
internal readonly record struct EffectiveDays(DateOnly From, DateOnly? Until)
{
    public bool Covers(EffectiveDays other) =>
        From <= other.From && (Until is null || (other.Until is { } until && until <= Until));

    /// <summary>What is left of these days once a later version took its own.</summary>
    public IEnumerable<EffectiveDays> Without(EffectiveDays taken)
    {
        if (taken.Until < From || (Until is { } last && taken.From > last))
        {
            yield return this;
            yield break;
        }
        if (From < taken.From)
            yield return this with { Until = taken.From.AddDays(-1) };
        if (taken.Until is { } end && (Until is null || Until > end))
            yield return this with { From = end.AddDays(1) };
    }
}
