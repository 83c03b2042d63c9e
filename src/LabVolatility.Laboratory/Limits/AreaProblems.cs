using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Limits;

/// <summary>What can be wrong in an area as entered.</summary>
internal static class AreaProblems
{
    public static IReadOnlyList<Problem> Of(LaboratoryArea area)
    {
        var problems = new List<Problem>();
        if (CodeProblems.Of(area.Code.Trim()) is { } code)
            problems.Add(code);
        else if (PublishedAreas.All.Any(a => a.Code == area.Code.Trim()))
            problems.Add(new Problem("/code", $"{area.Code} ships with the program: take another code."));
        if (string.IsNullOrWhiteSpace(area.Name))
            problems.Add(new Problem("/name", "Give the area a name."));
        if (string.IsNullOrWhiteSpace(area.Source))
            problems.Add(new Problem("/source", "Say where the calendar stands."));
        if (area.EffectiveUntil < area.EffectiveFrom)
            problems.Add(new Problem("/effectiveUntil", "It ends before it begins."));
        for (var i = 0; i < area.Calendar.Count; i++)
            CheckWindow(area.Calendar[i], i, problems);
        return problems;
    }

    private static void CheckWindow(SeasonWindow window, int index, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(window.Season))
            problems.Add(new Problem($"/calendar/{index}/season", "Name the season."));
        if (!MonthDay.TryFrom(window.From.Month, window.From.Day, out _) || !MonthDay.TryFrom(window.Until.Month, window.Until.Day, out _))
            problems.Add(new Problem($"/calendar/{index}/from", "There is no such day."));
        // A window puts one of the classes in force that hold all the year; a calendar can't name another calendar.
        if (PublishedAreas.All.FirstOrDefault(a => a.Code == window.Class) is not { Calendar.Count: 0 })
            problems.Add(new Problem($"/calendar/{index}/class", $"\"{window.Class}\" is no class that ships, such as EN228-A or D4814-C."));
    }
}
