namespace LabVolatility.Core.Limits;

/// <summary>When a season or a volatility class is in force in an area.</summary>
/// <param name="Season">Its name: "summer".</param>
/// <param name="From">The first day, included.</param>
/// <param name="Until">The last day, included; before <paramref name="From"/> where the window wraps the year end.</param>
/// <param name="Point">The point of compliance it is for; null: all.</param>
/// <param name="Class">The class in force, or the code of the area whose limits apply; null: the area's own.</param>
public sealed record SeasonWindow(
    string Season, MonthDay From, MonthDay Until, PointOfCompliance? Point = null, string? Class = null)
{
    /// <summary>Whether a day is in the window, both ends included.</summary>
    public bool Contains(DateOnly date)
    {
        var (from, until) = (From.In(date.Year), Until.In(date.Year));
        return from <= until ? date >= from && date <= until : date >= from || date <= until;
    }

    /// <summary>"summer, 1 May to 15 September".</summary>
    public override string ToString() => $"{Season}, {From} to {Until}";
}
