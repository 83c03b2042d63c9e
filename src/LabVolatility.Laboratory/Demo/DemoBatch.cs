using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>A batch of the demo.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Product">Its grade.</param>
/// <param name="Market">Where it goes.</param>
/// <param name="Tank">Null: from a line.</param>
/// <param name="Analyst">Who measures it.</param>
/// <param name="Instrument">On which tester.</param>
/// <param name="Back">How many days before the first start it is measured.</param>
internal sealed record DemoBatch(
    string Number, DemoProduct Product, DemoMarket Market, string? Tank, string Analyst, string Instrument, int Back)
{
    private const decimal Furthest = 2.2m;
    private const int DaysOfALot = 9;

    /// <summary>What it holds: DVPE in kPa, or RVP in psi for the blendstock. Batches of the same lots of components lie together.</summary>
    public decimal Value { get; init; } = Market.Target + (Market.Spread * Math.Clamp(
        (0.8m * DemoName.Scatter($"batch {Number}")) + (0.6m * DemoName.Scatter($"lot {Product.Code} {Back / DaysOfALot}")), -Furthest, Furthest));

    public decimal CubicMetres => Rounding.ToPlaces(6200m + (700m * DemoName.Scatter($"volume {Number}")), 0);

    public decimal EthanolPercent => Rounding.ToPlaces(9.6m + (0.15m * DemoName.Scatter($"ethanol {Number}")), 1);

    public bool HasEthanol => Product == DemoProduct.WithEthanol;

    /// <summary>The batch that the days' turn gives to a day: each product every fourth day, its tanks in turn.</summary>
    public static DemoBatch Of(DemoDays days, int day)
    {
        var back = days.Back(day);
        var product = DemoProduct.Of(back);
        var turn = back / DemoProduct.All.Count;
        var isExport = product == DemoProduct.Plain && turn % 4 == 3;
        return new DemoBatch(
            NumberOf(days, day), product, DemoMarket.On(product, days.Day(day), isExport), product.Tanks[turn % product.Tanks.Count],
            AnalystOf(back), DemoTesters.On(product, back), back);
    }

    public static string NumberOf(DemoDays days, int day) => FormattableString.Invariant($"{days.Day(day).Year % 100:00}-{1001 + day}");

    public static string AnalystOf(int back) => back % 2 == 0 ? DemoPeople.Ines : DemoPeople.Oskar;

    public DemoSample Sample(string name, int bottles, SampleLevel level = SampleLevel.Running) => new(
        $"{Number} {name}", Product, Number, Tank, Tank is null ? DemoReference.TransferLine : DemoReference.PointOf(Tank), level, bottles);

    /// <summary>What one bottle of it shows on its tester.</summary>
    public decimal Bottle(DemoSample sample, int container) => DemoTesters.Shown(Value, sample, container, Instrument, Back);
}
