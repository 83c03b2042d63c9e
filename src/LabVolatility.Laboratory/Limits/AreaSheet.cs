using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Limits;

/// <summary>One area with all that stands behind it.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Areas">All areas that count now, since a calendar may name others.</param>
/// <param name="Versions">The laboratory's versions of the area, drafts and withdrawn ones too, the newest first.</param>
/// <param name="Limits">The laboratory's own limits there, drafts and withdrawn ones too, by key, the newest first.</param>
/// <param name="Confirmed">Shipped limits of the area that the laboratory confirmed in its own copy.</param>
/// <param name="Grades">Codes of the grades that a limit may be for.</param>
public sealed record AreaSheet(
    string Code,
    IReadOnlyList<Area> Areas,
    IReadOnlyList<AreaVersion> Versions,
    IReadOnlyList<LimitVersion> Limits,
    IReadOnlyList<ConfirmedFact> Confirmed,
    IReadOnlyList<string> Grades)
{
    /// <summary>The versions that count now; each holds on days of its own.</summary>
    public IReadOnlyList<Area> Known => [.. Areas.Where(a => a.Code == Code)];

    /// <summary>Whether it ships with the program.</summary>
    public bool Ships => PublishedAreas.All.Any(a => a.Code == Code);

    /// <summary>The version in force on a day; where none is, the latest that counts; null: there are drafts only.</summary>
    public Area? On(DateOnly day) => Known.FirstOrDefault(a => a.IsInForce(day)) ?? Known.OrderBy(a => a.EffectiveFrom).LastOrDefault();
}
