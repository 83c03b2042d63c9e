using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What can be wrong in a grade as entered.</summary>
internal static class GradeProblems
{
    private const int FewestResults = 3;
    private const int MostResults = 30;
    private const int LongestWait = 720;

    public static IReadOnlyList<Problem> Of(Grade grade)
    {
        var problems = new List<Problem>();
        if (CodeProblems.Of(grade.Code) is { } code)
            problems.Add(code);
        if (CodeProblems.OfName(grade.Name) is { } name)
            problems.Add(name);
        if (grade.Confidence is <= 0.5m or >= 1m)
            problems.Add(new Problem("/confidence", "A one-sided confidence is above 0.5 and below 1, for example 0.95."));
        if (grade.ResultsInAll is < FewestResults or > MostResults)
            problems.Add(new Problem("/resultsInAll", $"Once duplicates disagree, {FewestResults} to {MostResults} results are made in all."));
        if (grade.Tests.Count == 0)
            problems.Add(new Problem("/tests", "A grade has at least one test: its samples would wait for nothing."));
        for (var i = 0; i < grade.Tests.Count; i++)
            Check(grade, grade.Tests[i], i, problems);
        if (grade.Parties.Probability is <= 0m or >= 1m)
            problems.Add(new Problem("/probability", "A probability is above 0 and below 1, for example 0.5."));
        problems.AddRange(RetestProblems.Of(grade.Tree));
        return problems;
    }

    private static void Check(Grade grade, GradeTest test, int index, List<Problem> problems)
    {
        var field = $"/tests/{index}";
        if (test.HoursToResult is < 1 or > LongestWait)
            problems.Add(new Problem($"{field}/hoursToResult", $"A result is due 1 to {LongestWait} hours after receipt."));
        if (!TestMethods.TryFind(test.Method, out var method))
        {
            problems.Add(new Problem($"{field}/method", $"\"{test.Method}\" is not a test method of this laboratory."));
            return;
        }

        if (grade.Tests.Take(index).Any(t => t.Method == test.Method))
            problems.Add(new Problem($"{field}/method", $"{test.Method} is assigned twice; ask for a duplicate instead."));
        if (!method.Kinds.Contains(grade.Kind))
            problems.Add(new Problem($"{field}/method", $"{test.Method} does not take {grade.Kind.Text()}."));
        if (test.Authorities.Count == 0)
            problems.Add(new Problem($"{field}/authorities", $"Say whose equation is reported: {Known(method)}."));
        foreach (var authority in test.Authorities.Where(a => !method.Authorities.Contains(a)))
            problems.Add(new Problem($"{field}/authorities", $"{authority.Text()} has no equation on {test.Method}; it takes {Known(method)}."));
    }

    private static string Known(TestMethod method) => string.Join(" or ", method.Authorities.Select(a => a.Text()));
}
