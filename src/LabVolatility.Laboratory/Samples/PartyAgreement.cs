using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What was agreed with other parties before testing.</summary>
/// <param name="Rule">How their result is compared.</param>
/// <param name="Probability">P of ASTM D3244: the chance of acceptance when the true value sits exactly on the limit.</param>
/// <param name="Comparison">Absolute or rounding, for ASTM D3244.</param>
public sealed record PartyAgreement(PartyRule Rule, decimal Probability, Comparison Comparison)
{
    /// <summary>ISO 4259-2; under ASTM D3244 the even chance of an ordinary property (from memory), which leaves the limit where it is.</summary>
    public static PartyAgreement Usual { get; } = new(PartyRule.Iso4259, 0.5m, Comparison.Rounding);

    public static string Words(PartyRule rule) => rule switch
    {
        PartyRule.Iso4259 => "ISO 4259-2, two laboratories",
        PartyRule.AstmD3244 => "ASTM D3244, assigned test value",
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "No such rule."),
    };
}
