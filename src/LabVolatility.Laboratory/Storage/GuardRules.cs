namespace LabVolatility.Laboratory.Storage;

/// <summary>The rules that the database itself holds, as they stand at the head of its messages.</summary>
public static class GuardRules
{
    public const string AppendOnly = "append-only";
    public const string SameKey = "same-key";
    public const string SecondPersonSigns = "second-person-signs";
    public const string EvidenceIsFrozen = "evidence-is-frozen";
    public const string NoConcessionAgainstALegalLimit = "no-concession-against-a-legal-limit";
    public const string OneDecisionInForce = "one-decision-in-force";
    public const string ReadyInstrumentOnly = "ready-instrument-only";
    public const string OneTestAContainer = "one-test-a-container";
    public const string CargoRestsOnReleases = "cargo-rests-on-releases";
    public const string UnbrokenChain = "unbroken-chain";

    private static readonly string[] All =
    [
        AppendOnly, SameKey, SecondPersonSigns, EvidenceIsFrozen, NoConcessionAgainstALegalLimit, OneDecisionInForce,
        ReadyInstrumentOnly, OneTestAContainer, CargoRestsOnReleases, UnbrokenChain,
    ];

    /// <summary>The rule that a driver's message names, or null.</summary>
    internal static string? Of(string message) =>
        Array.Find(All, rule => message.Contains(rule + ": ", StringComparison.Ordinal));
}
