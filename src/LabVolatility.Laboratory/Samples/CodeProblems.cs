using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What a code and a name of a grade, tank or sample point must be.</summary>
internal static class CodeProblems
{
    public static Problem? Of(string? code) =>
        code is { Length: > 0 and <= Lengths.Code } && code.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '_')
            ? null
            : new Problem("/code", $"A code has 1 to {Lengths.Code} letters, digits, points and hyphens, for example T-101.");

    public static Problem? OfName(string? name) =>
        string.IsNullOrWhiteSpace(name) || name.Trim().Length > Lengths.Name
            ? new Problem("/name", $"A name has 1 to {Lengths.Name} characters.")
            : null;
}
