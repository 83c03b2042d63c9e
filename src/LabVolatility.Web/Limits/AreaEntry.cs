using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Limits;

/// <summary>An area as typed.</summary>
public sealed class AreaEntry
{
    public string? Code { get; set; }

    public string? Name { get; set; }

    public bool Derogation { get; set; }

    public string? Source { get; set; }

    public string? From { get; set; }

    public string? Until { get; set; }

    public List<WindowEntry> Windows { get; } = [];

    /// <summary>The next version of an area: everything as it was, from a new day.</summary>
    public static AreaEntry Of(LaboratoryArea area)
    {
        var entry = new AreaEntry { Code = area.Code, Name = area.Name, Derogation = area.Derogation, Source = area.Source };
        entry.Windows.AddRange(area.Calendar.Select(WindowEntry.Of));
        return entry;
    }

    /// <summary>The draft, or what can't be read of it.</summary>
    public LaboratoryArea? Read(out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        EntryNeeds.Text(Code, "/code", "Give the area a code, for example NORTH-COAST.", found);
        EntryNeeds.Text(Name, "/name", "Give the area a name.", found);
        var (from, until) = (EntryNeeds.Day(From, "/effectiveFrom", found), EntryNeeds.DayOrNone(Until, "/effectiveUntil", found));
        EntryNeeds.Text(Source, "/source", "Say where the calendar stands.", found);
        if (Windows.Count == 0)
            found.Add(new Problem("/calendar", "Give at least one season: an area of the laboratory's own says which class is in force when."));
        problems = found;
        return found.Count > 0 ? null : new LaboratoryArea
        {
            Code = (Code ?? "").Trim(),
            Name = Name ?? "",
            Derogation = Derogation,
            Source = Source ?? "",
            EffectiveFrom = from,
            EffectiveUntil = until,
            Calendar = [.. Windows.Select(w => w.Read())],
        };
    }
}
