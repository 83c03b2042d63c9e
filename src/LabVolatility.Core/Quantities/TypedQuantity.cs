using System.Globalization;
using System.Text.RegularExpressions;

namespace LabVolatility.Core.Quantities;

/// <summary>Takes typed text apart into a number and a unit, without guessing.</summary>
internal static partial class TypedQuantity
{
    private const NumberStyles Allowed = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    /// <summary>Parts number and unit; says why when the text is neither.</summary>
    public static bool TrySplit(
        string? text, string example, out string number, out string symbol, out string? problem)
    {
        (number, symbol) = ("", "");
        var typed = Plain(text);
        if (typed.Length == 0)
        {
            problem = $"Enter a number: for example {example}.";
            return false;
        }

        var match = NumberThenUnit().Match(typed);
        (number, symbol) = (match.Groups["number"].Value, match.Groups["unit"].Value);
        problem = match.Success ? null
            : char.IsLetter(typed[0]) && typed.Any(char.IsAsciiDigit)
                ? $"\"{typed}\" looks like a sample number; enter the number that was read: for example {example}."
            : SpacedDigits().IsMatch(typed)
                ? $"Write it without a space between the digits: for example {example}."
            : $"\"{typed}\" is not a number: for example {example}.";
        return match.Success;
    }

    /// <summary>Reads a number with a point or a comma as its decimal mark.</summary>
    /// <param name="number">Digits, marks and an optional sign.</param>
    /// <param name="fits">Whether a number is plausible in the field.</param>
    /// <param name="value">The number.</param>
    /// <param name="problem">What is wrong; null when it could be read.</param>
    public static bool TryNumber(string number, Func<decimal, bool> fits, out decimal value, out string? problem)
    {
        value = default;
        problem = null;
        if (number.Count(c => c is '.' or ',') > 1)
            problem = $"\"{number}\" has more than one point or comma; write 1234.5, without a thousands separator.";
        else if (!decimal.TryParse(number.Replace(',', '.'), Allowed, CultureInfo.InvariantCulture, out value))
            problem = $"\"{number}\" has too many digits.";
        else if (LooksGrouped().IsMatch(number) && (!fits(value) || fits(value * 1000m)))
            problem = Ask(number, value, fits(value));
        return problem is null;
    }

    private static string Ask(string number, decimal value, bool isPlausible)
    {
        var whole = Rounding.Plain(value * 1000m);
        return isPlausible
            ? $"\"{number}\" may mean {Rounding.Plain(value)} or {whole}; write {Rounding.Text(value, 4)} or {whole}."
            : $"Is \"{number}\" meant as {whole}? Then write {whole}, without a separator.";
    }

    // White space of every kind is taken by Trim and by \s below; only the typographic minus needs help.
    private static string Plain(string? text) => (text ?? "").Replace('\u2212', '-').Trim();

    [GeneratedRegex(@"^(?<number>[+-]?(?:[0-9][0-9.,]*|[.,][0-9]+))\s*(?<unit>%|[°º]?\s?\p{L}*[0-9³]?)$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberThenUnit();

    [GeneratedRegex(@"^[+-]?[0-9.,]+(\s+[0-9.,]+)+", RegexOptions.CultureInvariant)]
    private static partial Regex SpacedDigits();

    // One to three digits, a mark, three digits: the shape of a thousands group. "0.500" can't be one.
    [GeneratedRegex(@"^[+-]?[1-9][0-9]{0,2}[.,][0-9]{3}$", RegexOptions.CultureInvariant)]
    private static partial Regex LooksGrouped();
}
