using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Where the demo sells on a day: destinations, period of use, and what is blended to. Figures of the demo's own.</summary>
/// <param name="Destinations">Areas with limits on every day of the year.</param>
/// <param name="From">The first day of use.</param>
/// <param name="Until">The last day of use, within one season.</param>
/// <param name="Target">What the blender aims at: DVPE in kPa, or RVP in psi for the blendstock.</param>
/// <param name="Highest">The highest value that the law lets pass there, in the same unit.</param>
/// <param name="Spread">Standard deviation of the batches around the target.</param>
internal sealed record DemoMarket(
    IReadOnlyList<Destination> Destinations, DateOnly From, DateOnly Until, decimal Target, decimal Highest, decimal Spread)
{
    public const string Coast = "NORTHMERE-COAST";
    public const string Export = "EN228-B";

    private const string FederalLevel = "US-9.0";
    private const string PipelineClass = "D4814-C";
    private const int DaysOfUse = 14;

    public static SeasonWindow CoastSummer { get; } = new("summer", new MonthDay(5, 1), new MonthDay(9, 30), Class: "EN228-A-W");

    public static SeasonWindow CoastWinter { get; } = new("winter", new MonthDay(10, 1), new MonthDay(4, 30), Class: "EN228-D");

    private static readonly SeasonWindow FederalSummer = new("summer", new MonthDay(5, 1), new MonthDay(9, 15));

    public static DemoMarket On(DemoProduct product, DateOnly day, bool export = false) =>
        product == DemoProduct.Blendstock ? ForBlendstock(day)
        : export ? new([At(Export)], day, day.AddDays(DaysOfUse), 65.0m, 70.0m, 0.5m)
        : ForCoast(product, day);

    private static DemoMarket ForCoast(DemoProduct product, DateOnly day)
    {
        var isSummer = CoastSummer.Contains(day);
        var (target, highest) = (isSummer, product == DemoProduct.WithEthanol) switch
        {
            (true, true) => (64.9m, 67.8m),
            (true, false) => (57.4m, 60.0m),
            (false, true) => (Winter(day, CoastSummer, 86.6m, 68.0m, 0.04m), 90.0m),
            (false, false) => (Winter(day, CoastSummer, 86.2m, 62.8m, 0.04m), 90.0m),
        };
        return new([At(Coast)], day, LastDay(day, CoastSummer), target, highest, 0.5m);
    }

    private static DemoMarket ForBlendstock(DateOnly day)
    {
        var (target, highest) = FederalSummer.Contains(day) ? (8.60m, 9.0m) : (Winter(day, FederalSummer, 10.60m, 9.20m, 0.004m), 11.3m);
        return new([At(FederalLevel), At(PipelineClass)], day, LastDay(day, FederalSummer), target, highest, 0.06m);
    }

    /// <summary>Highest in the middle of January, a little lower for each day from there; in the last two weeks the tanks are brought down for summer.</summary>
    private static decimal Winter(DateOnly day, SeasonWindow summer, decimal highest, decimal last, decimal aDay)
    {
        var year = day.Month > 6 ? day.Year + 1 : day.Year;
        var target = highest - (aDay * Math.Abs(day.DayNumber - new DateOnly(year, 1, 15).DayNumber));
        var left = Enumerable.Range(1, DaysOfUse).FirstOrDefault(n => summer.Contains(day.AddDays(n)));
        return left == 0 ? target : last + ((target - last) * (left - 1) / DaysOfUse);
    }

    // A period of use that reaches into the next season would have to meet the limits of both.
    private static DateOnly LastDay(DateOnly from, SeasonWindow summer)
    {
        var until = from;
        while (until < from.AddDays(DaysOfUse) && summer.Contains(until.AddDays(1)) == summer.Contains(from))
            until = until.AddDays(1);
        return until;
    }

    private static Destination At(string area) => new(area, PointOfCompliance.Terminal);
}
