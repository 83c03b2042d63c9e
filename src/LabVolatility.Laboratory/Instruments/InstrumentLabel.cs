using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Instruments;

/// <summary>What the bar code on an instrument says: X, the letters and digits of its code, check character: "XVP1F".</summary>
/// <remarks>No sign between them: a scanner set to another keyboard would exchange it.</remarks>
public static class InstrumentLabel
{
    private const char First = 'X';
    private const int Longest = 20;

    /// <summary>The label of an instrument; null where its code has letters that labels avoid (I, O, S, Y, Z) or none at all.</summary>
    public static string? For(string code)
    {
        var body = string.Concat(code.Where(char.IsAsciiLetterOrDigit)).ToUpperInvariant();
        return body.Length is > 0 and <= Longest && body.All(c => CheckCharacter.Alphabet.Contains(c, StringComparison.Ordinal))
            ? First + body + CheckCharacter.For(body)
            : null;
    }

    /// <summary>True where a scan is this instrument's label, or a person typed its code in the label's place.</summary>
    public static bool Names(string? scan, string code)
    {
        var text = scan?.Trim();
        return string.Equals(text, code, StringComparison.OrdinalIgnoreCase) || (For(code) is { } label && string.Equals(text, label, StringComparison.OrdinalIgnoreCase));
    }
}
