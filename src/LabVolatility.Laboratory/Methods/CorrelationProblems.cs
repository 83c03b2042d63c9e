using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Methods;

/// <summary>What can be wrong in a correlation as entered.</summary>
internal static class CorrelationProblems
{
    private const int MostDigits = 8;
    private const decimal LargestSlope = 2m;

    public static IReadOnlyList<Problem> Of(CorrelationEntry entry)
    {
        var problems = new List<Problem>();
        if (!TestMethods.TryFind(entry.Method, out var method))
            problems.Add(new Problem("/method", $"\"{entry.Method}\" is not a test method of this laboratory."));
        else if (!Correlations.AreOwn(method))
            problems.Add(new Problem("/method", $"The correlation of {entry.Method} is public and ships with the program."));
        if (entry.TotalSlope is <= 0m or > LargestSlope)
            problems.Add(new Problem("/a", "The pressure rises with the total pressure: a is above 0, at most 2."));
        if (Math.Abs(entry.GasSlope) > LargestSlope)
            problems.Add(new Problem("/b", "b is −2 to 2; 0 where the correlation doesn't take the gas pressure."));
        CheckDigits(entry.TotalSlope, "/a", problems);
        CheckDigits(entry.GasSlope, "/b", problems);
        CheckDigits(entry.Constant, "/c", problems);
        if (entry.Until < entry.From)
            problems.Add(new Problem("/until", "It ends before it begins."));
        if (string.IsNullOrWhiteSpace(entry.Source))
            problems.Add(new Problem("/source", "Say where it stands: designation, edition, clause."));
        return problems;
    }

    private static void CheckDigits(decimal number, string field, List<Problem> problems)
    {
        if (Rounding.ToPlaces(number, MostDigits) != number)
            problems.Add(new Problem(field, $"At most {MostDigits} decimals are kept."));
    }
}
