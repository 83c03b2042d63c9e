namespace LabVolatility.Laboratory.Samples;

/// <summary>The rule by which another party's result is held beside ours.</summary>
public enum PartyRule
{
    /// <summary>The means of the two laboratories agree, or they don't.</summary>
    Iso4259,

    /// <summary>An assigned test value is held against an acceptance limit.</summary>
    AstmD3244,
}
