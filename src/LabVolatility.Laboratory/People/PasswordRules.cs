namespace LabVolatility.Laboratory.People;

/// <summary>Which passwords are taken: long ones that nobody guesses; no rule about kinds of characters.</summary>
/// <remarks>Source: NIST SP 800-63B-4, 3.1.1.2; OWASP ASVS 5.0.0, V6.2.</remarks>
public static class PasswordRules
{
    public const int Shortest = 15;
    public const int Longest = 128;

    private const int FewestDifferent = 6;
    private const int FewestOwnLetters = 6;

    /// <summary>What is wrong with the password, or null. Words about the person and the laboratory count as known.</summary>
    public static string? Problem(string? password, params IEnumerable<string> context)
    {
        if (string.IsNullOrEmpty(password) || password.Length < Shortest)
            return $"A password has at least {Shortest} characters; a few words in a row are easy to remember.";
        if (password.Length > Longest)
            return $"A password has at most {Longest} characters.";

        var plain = password.ToUpperInvariant();
        if (plain.Distinct().Count() < FewestDifferent)
            return $"This password repeats itself: use at least {FewestDifferent} different characters.";
        return Left(plain, context) < FewestOwnLetters
            ? "This password is made of words and rows of keys that are tried first: add words of your own."
            : null;
    }

    // What remains once everything guessable is struck out.
    private static int Left(string plain, IEnumerable<string> context)
    {
        var known = CommonPasswordWords.All
            .Concat(context.SelectMany(Words))
            .Select(w => w.ToUpperInvariant())
            .OrderByDescending(w => w.Length);
        foreach (var word in known)
            plain = plain.Replace(word, " ", StringComparison.Ordinal);
        return plain.Where(char.IsLetterOrDigit).Distinct().Count();
    }

    private static IEnumerable<string> Words(string text) =>
        text.Split([' ', '.', '-', '_', '@'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length >= 3);
}
