using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The rule "the last sealed container is kept": it is the retained portion, not offered for testing before its date.</summary>
/// <remarks>40 CFR 1090.1345. A sample that came in one container has no retained portion to keep.</remarks>
public static class RetainedPortion
{
    public const string Rule = "retained-portion-is-kept";

    /// <summary>The container that is kept, or null where there is only one or none is sealed any more.</summary>
    public static Container? Of(Sample sample)
    {
        if (sample.Containers.Count < 2)
            return null;
        var sealedOnes = sample.Containers.Where(c => c.Openings.Count == 0 && c.DisposedAt is null && !c.Leaking)
            .OrderByDescending(c => c.Number).ToList();
        return sealedOnes.FirstOrDefault();
    }

    /// <summary>The refusal where the container is the one that is kept.</summary>
    public static Problem? Check(Sample sample, Container container, DateOnly today) =>
        Of(sample)?.Id == container.Id && !(container.RetainUntil < today)
            ? new Problem(
                "/containerNumber",
                $"Container {container.Number} is the last sealed one: it is the retained portion"
                + (container.RetainUntil is { } until ? $" until {until:yyyy-MM-dd}." : " until testing is complete.")
                + " Ask for a new sample.",
                Rule)
            : null;
}
