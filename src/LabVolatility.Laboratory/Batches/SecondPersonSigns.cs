using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>The rule "a second person signs": who measured or amended any result of a batch can't sign its release, at night and alone neither.</summary>
public static class SecondPersonSigns
{
    public const string Rule = "second-person-signs";

    /// <summary>The refusal where the person had a hand in a result, or null.</summary>
    public static Problem? Check(IReadOnlySet<Guid> measurersAndAmenders, Guid signer) =>
        measurersAndAmenders.Contains(signer)
            ? new Problem("", "You measured or amended a result of this batch. Somebody else signs its release: an on-call signer may do it from where they are.", Rule)
            : null;
}
