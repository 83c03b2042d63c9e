using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Today;

/// <summary>The next day on which other limits hold at a destination.</summary>
/// <param name="Area">The area's code.</param>
/// <param name="Point">The point of compliance.</param>
/// <param name="Grade">The grade that was asked for: the one last made for this destination.</param>
/// <param name="On">The first day of the new limits.</param>
/// <param name="Days">Days until then.</param>
/// <param name="Before">The limits in force until the day before, in words.</param>
/// <param name="After">Those in force from then on.</param>
public sealed record SeasonChange(string Area, PointOfCompliance Point, string Grade, DateOnly On, int Days, string Before, string After);
