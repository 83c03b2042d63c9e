using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Limits;

/// <summary>What every version needs, as typed: its days, and texts that can't be left out.</summary>
internal static class EntryNeeds
{
    private const string How = "Give the day as 2026-11-25";

    /// <summary>Says what is missing together with what can't be read, so that all stands there at once.</summary>
    public static void Text(string? text, string field, string problem, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            problems.Add(new Problem(field, problem));
    }

    public static DateOnly Day(string? text, string field, List<Problem> problems)
    {
        if (!LimitWords.TryDay(text, out var day))
            problems.Add(new Problem(field, $"{How}."));
        return day;
    }

    public static DateOnly? DayOrNone(string? text, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (LimitWords.TryDay(text, out var day))
            return day;
        problems.Add(new Problem(field, $"{How}, or leave it empty."));
        return null;
    }
}
