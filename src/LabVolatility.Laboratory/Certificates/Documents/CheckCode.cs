using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The code by which a recipient asks whether a certificate is genuine and in force: "7H2K-9QXB-41TN".</summary>
/// <remarks>Eleven characters of chance, about 54 bits, and the check character of <see cref="CheckCharacter"/>.</remarks>
public static class CheckCode
{
    /// <summary>Bytes of randomness that one code takes.</summary>
    public const int RandomBytes = 10;

    private const int Length = 12;
    private const int Group = 4;

    /// <summary>A code from randomness that cannot be foreseen.</summary>
    /// <exception cref="ArgumentException">It is not <see cref="RandomBytes"/> bytes long.</exception>
    public static string From(ReadOnlySpan<byte> random)
    {
        if (random.Length != RandomBytes)
            throw new ArgumentException("A check code is made from 10 random bytes.", nameof(random));
        var number = UInt128.Zero;
        foreach (var part in random)
            number = (number << 8) | part;
        Span<char> code = stackalloc char[Length];
        for (var at = 0; at < Length - 1; at++)
        {
            (number, var digit) = UInt128.DivRem(number, (UInt128)CheckCharacter.Alphabet.Length);
            code[at] = CheckCharacter.Alphabet[(int)digit];
        }

        code[^1] = CheckCharacter.For(code[..^1]);
        return Grouped(code);
    }

    /// <summary>Reads a code as a person types it, in any case and with any hyphens and spaces.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="code">The code as printed; empty where the answer is false.</param>
    public static bool TryParse(string? text, out string code)
    {
        var typed = string.Concat((text ?? string.Empty).Where(c => !IsFiller(c))).ToUpperInvariant();
        var fits = typed.Length == Length && CheckCharacter.Fits(typed);
        code = fits ? Grouped(typed) : string.Empty;
        return fits;
    }

    private static bool IsFiller(char character) =>
        char.IsWhiteSpace(character) || char.IsControl(character) || character is '-' or '\u2010' or '\u2011' or '\u2013';

    private static string Grouped(ReadOnlySpan<char> code) =>
        $"{code[..Group]}-{code[Group..(2 * Group)]}-{code[(2 * Group)..]}";
}
