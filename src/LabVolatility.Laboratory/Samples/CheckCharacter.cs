using System.Buffers;

namespace LabVolatility.Laboratory.Samples;

/// <summary>One character that refuses a mistyped or misread code.</summary>
/// <remarks>
/// Our own scheme, built like the pure systems of ISO/IEC 7064: the sum of value × 3^position, modulo 31, is to be
/// zero. 31 is prime and 3 has order 30 modulo 31, so in a code of up to 30 characters each change of one character
/// and each swap of two unlike characters, neighbours or not, leaves a sum that is not zero.
/// </remarks>
public static class CheckCharacter
{
    /// <summary>
    /// Digits and A to X without I, O and S: no look-alikes of 1, 0 and 5, and neither Y nor Z, which a scanner set
    /// to another keyboard exchanges.
    /// </summary>
    public const string Alphabet = "0123456789ABCDEFGHJKLMNPQRTUVWX";

    private const int Modulus = 31;
    private const int Radix = 3;
    private const int LongestCode = 30;

    private static readonly SearchValues<char> Known = SearchValues.Create(Alphabet);

    /// <summary>The character to put behind <paramref name="body"/>.</summary>
    /// <exception cref="ArgumentException">The body is too long, or has a character outside the alphabet.</exception>
    public static char For(ReadOnlySpan<char> body)
    {
        if (body.Length >= LongestCode || body.ContainsAnyExcept(Known))
            throw new ArgumentException("A code is at most 29 characters of the alphabet.", nameof(body));
        return Alphabet[(Modulus - (Sum(body) * Radix % Modulus)) % Modulus];
    }

    /// <summary>True where the last character of <paramref name="code"/> belongs to those before it.</summary>
    public static bool Fits(ReadOnlySpan<char> code) =>
        code.Length is > 1 and <= LongestCode && !code.ContainsAnyExcept(Known) && Sum(code) == 0;

    private static int Sum(ReadOnlySpan<char> code)
    {
        var sum = 0;
        foreach (var character in code)
            sum = ((sum * Radix) + Alphabet.IndexOf(character, StringComparison.Ordinal)) % Modulus;
        return sum;
    }
}
