namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Writes text as a Code 128 bar code.</summary>
/// <remarks>
/// ISO/IEC 15417:2007; patterns from memory, each of them read back by a decoder in the tests. Code set B, and code
/// set C for runs of digits where that is shorter.
/// </remarks>
internal static class Code128
{
    private const int ToSetC = 99;
    private const int ToSetB = 100;
    private const int StartB = 104;
    private const int StartC = 105;
    private const int Stop = 106;
    private const int Modulus = 103;

    // Bar, space, bar, space, bar, space of each symbol character, in modules; the stop has a last bar more.
    private static readonly string[] Patterns =
    [
        "212222", "222122", "222221", "121223", "121322", "131222", "122213", "122312", "132212", "221213",
        "221312", "231212", "112232", "122132", "122231", "113222", "123122", "123221", "223211", "221132",
        "221231", "213212", "223112", "312131", "311222", "321122", "321221", "312212", "322112", "322211",
        "212123", "212321", "232121", "111323", "131123", "131321", "112313", "132113", "132311", "211313",
        "231113", "231311", "112133", "112331", "132131", "113123", "113321", "133121", "313121", "211331",
        "231131", "213113", "213311", "213131", "311123", "311321", "331121", "312113", "312311", "332111",
        "314111", "221411", "431111", "111224", "111422", "121124", "121421", "141122", "141221", "112214",
        "112412", "122114", "122411", "142112", "142211", "241211", "221114", "413111", "241112", "134111",
        "111242", "121142", "121241", "114212", "124112", "124211", "411212", "421112", "421211", "212141",
        "214121", "412121", "111143", "111341", "131141", "114113", "114311", "411113", "411311", "113141",
        "114131", "311141", "411131", "211412", "211214", "211232", "2331112",
    ];

    /// <summary>The modules from the first bar to the last, true where it is black; no quiet zone.</summary>
    /// <exception cref="ArgumentException">The text is empty or holds other than printable ASCII.</exception>
    public static IReadOnlyList<bool> Modules(string text)
    {
        if (text.Length == 0 || text.Any(c => c is < ' ' or > '~'))
            throw new ArgumentException("A bar code holds printable ASCII, at least one character.", nameof(text));
        List<bool> modules = [];
        foreach (var symbol in Symbols(text))
        {
            var black = true;
            foreach (var width in Patterns[symbol])
            {
                modules.AddRange(Enumerable.Repeat(black, width - '0'));
                black = !black;
            }
        }

        return modules;
    }

    private static List<int> Symbols(string text)
    {
        List<int> symbols = [];
        var inSetC = false;
        for (var at = 0; at < text.Length;)
        {
            var digits = text.Skip(at).TakeWhile(char.IsAsciiDigit).Count();
            var pays = digits >= 6 || (digits >= 4 && (at == 0 || at + digits == text.Length));
            var setC = inSetC ? digits >= 2 : pays && digits % 2 == 0;
            if (symbols.Count == 0)
                symbols.Add(setC ? StartC : StartB);
            else if (setC != inSetC)
                symbols.Add(setC ? ToSetC : ToSetB);
            inSetC = setC;
            symbols.Add(setC ? ((text[at] - '0') * 10) + text[at + 1] - '0' : text[at] - ' ');
            at += setC ? 2 : 1;
        }

        var check = symbols.Select((symbol, at) => symbol * Math.Max(at, 1)).Sum() % Modulus;
        return [.. symbols, check, Stop];
    }
}
