using System.Security.Cryptography;

namespace LabVolatility.Laboratory.People;

/// <summary>A secret to hand over once: to be read aloud and typed, so without look-alikes.</summary>
public static class OneTimePassword
{
    private const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
    private const int Groups = 5;
    private const int GroupLength = 4;

    /// <summary>Five groups of four, 99 bits: "k7mf-…".</summary>
    public static string Make() =>
        string.Join('-', Enumerable.Range(0, Groups).Select(_ => RandomNumberGenerator.GetString(Letters, GroupLength)));
}
