using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Limits;

/// <summary>What the list of limits shows.</summary>
/// <param name="Areas">All that count now; an area with several versions stands once for each.</param>
/// <param name="Grades">Grades in use.</param>
/// <param name="Drafts">Drafts of areas and limits that wait for another person, the oldest first.</param>
public sealed record LimitsSheet(IReadOnlyList<Area> Areas, IReadOnlyList<Grade> Grades, IReadOnlyList<LimitDraft> Drafts);
