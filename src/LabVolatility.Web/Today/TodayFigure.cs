namespace LabVolatility.Web.Today;

/// <summary>One of the first numbers of the day.</summary>
/// <param name="Label">What it is: "To the slot".</param>
/// <param name="Value">The number with its unit, or words where there is none.</param>
/// <param name="Note">What stands behind it.</param>
/// <param name="Address">The page that shows it in full.</param>
/// <param name="IsLate">True where it asks for attention; the note says why.</param>
public sealed record TodayFigure(string Label, string Value, string Note, string? Address = null, bool IsLate = false);
