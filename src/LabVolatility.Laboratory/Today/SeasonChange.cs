using LabVolatility.Core.Limits;

namespace LabVolatility.Laboratory.Today;

/// <summary>The next day on which other limits hold at a destination, and the tanks that go there.</summary>
/// <param name="Area">The area's code.</param>
/// <param name="Point">The point of compliance.</param>
/// <param name="Grade">The grade that was asked for: the one last made for this destination.</param>
/// <param name="Days">Days until then.</param>
/// <param name="Year">What holds in the year ahead: at least two periods, the one that runs first.</param>
public sealed record SeasonChange(string Area, PointOfCompliance Point, string Grade, int Days, IReadOnlyList<SeasonPeriod> Year)
{
    /// <summary>The tanks whose last batch goes there, those not fit for the new limits first.</summary>
    public IReadOnlyList<TankStanding> Tanks { get; init; } = [];

    /// <summary>The first day of the new limits.</summary>
    public DateOnly On => Year[1].From;

    /// <summary>The limits in force until the day before, in words.</summary>
    public string Before => Year[0].Limits;

    /// <summary>Those in force from then on.</summary>
    public string After => Year[1].Limits;
}
