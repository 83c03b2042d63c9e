using static System.FormattableString;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The decision rules in the words of a certificate.</summary>
public static class DecisionRuleWords
{
    public const string Rounding = "simple acceptance after rounding (ASTM E29, rounding method)";

    public const string Absolute = "simple acceptance without rounding (ASTM E29, absolute method)";

    /// <param name="confidencePercent">One-sided confidence in percent.</param>
    /// <param name="acceptanceLimit">The acceptance limit with its unit, or null where R is not set.</param>
    public static string Guarded(decimal confidencePercent, string? acceptanceLimit) =>
        Invariant($"guarded acceptance at {confidencePercent:0.##} % confidence (ISO 4259-2), ")
        + (acceptanceLimit is null ? "reproducibility not set" : "acceptance limit " + acceptanceLimit);
}
