using System.Text.RegularExpressions;
using PdfSharp.Drawing;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Measures text and breaks it into lines; remembers the width of each character.</summary>
internal sealed partial class TextRuler(XGraphics graphics)
{
    private const char Binder = '\u00A0';

    private readonly Dictionary<(XFont, string), double> _widths = [];

    public double Width(string text, XFont font)
    {
        var width = 0.0;
        for (var at = 0; at < text.Length; at += char.IsSurrogatePair(text, at) ? 2 : 1)
        {
            var character = text.Substring(at, char.IsSurrogatePair(text, at) ? 2 : 1);
            if (!_widths.TryGetValue((font, character), out var one))
                _widths[(font, character)] = one = graphics.MeasureString(character, font).Width;
            width += one;
        }

        return width;
    }

    /// <summary>
    /// Lines no wider than <paramref name="width"/>; a number stays with its unit, a word that is wider by itself is cut.
    /// </summary>
    public IReadOnlyList<string> Lines(string text, XFont font, double width)
    {
        List<string> lines = [];
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            var line = string.Empty;
            foreach (var bound in Words(paragraph))
            {
                var word = bound.Replace(Binder, ' ');
                var longer = line.Length == 0 ? word : line + " " + word;
                if (Width(longer, font) <= width)
                {
                    line = longer;
                    continue;
                }

                if (line.Length > 0)
                    lines.Add(line);
                line = Cut(word, font, width, lines);
            }

            lines.Add(line);
        }

        return lines;
    }

    /// <summary>The text, or as much of its beginning as fits, ending in an ellipsis.</summary>
    public string Shortened(string text, XFont font, double width)
    {
        var fitting = Printable(text);
        if (Width(fitting, font) <= width)
            return fitting;
        while (fitting.Length > 0 && Width(fitting + "…", font) > width)
            fitting = fitting[..^1];
        return fitting.TrimEnd() + "…";
    }

    private string Cut(string word, XFont font, double width, List<string> lines)
    {
        while (word.Length > 1 && Width(word, font) > width)
        {
            var length = 1;
            while (length < word.Length - 1 && Width(word[..(length + 1)], font) <= width)
                length++;
            lines.Add(word[..length]);
            word = word[length..];
        }

        return word;
    }

    private static string[] Words(string paragraph) => BeforeUnit()
        .Replace(Printable(paragraph), Binder.ToString())
        .Split(' ', StringSplitOptions.RemoveEmptyEntries);

    [GeneratedRegex("(?<=[0-9]) (?=(kPa|Pa|psi|m?bar|mmHg|°C|°F|mL|L|m³|%)(?![A-Za-z]))", RegexOptions.CultureInvariant)]
    private static partial Regex BeforeUnit();

    private static string Printable(string text) =>
        string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
}
