using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Limits;

/// <summary>The first and the last day of a version, as typed.</summary>
internal static class EntryDays
{
    private const string How = "Give the day as 2026-11-25";

    public static DateOnly Needed(string? text, string field, List<Problem> problems)
    {
        if (!LimitWords.TryDay(text, out var day))
            problems.Add(new Problem(field, $"{How}."));
        return day;
    }

    public static DateOnly? Optional(string? text, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (LimitWords.TryDay(text, out var day))
            return day;
        problems.Add(new Problem(field, $"{How}, or leave it empty."));
        return null;
    }
}
