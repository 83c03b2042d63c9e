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
internal sealed record DemoBatch(string Number, DemoProduct Product, DemoMarket Market, string? Tank, string Analyst, string Instrument)
{
    // Of one bottle against the next: a seventh of the demo's r.
    private const decimal NoiseKpa = 0.12m;
    private const decimal NoisePsi = 0.015m;

    /// <summary>What it holds: DVPE in kPa, or RVP in psi for the blendstock.</summary>
    public decimal Value { get; init; } = Market.Target + (Market.Spread * DemoName.Scatter($"batch {Number}"));

    public decimal CubicMetres => Rounding.ToPlaces(6200m + (700m * DemoName.Scatter($"volume {Number}")), 0);

    public decimal EthanolPercent => Rounding.ToPlaces(9.6m + (0.15m * DemoName.Scatter($"ethanol {Number}")), 1);

    public bool HasEthanol => Product == DemoProduct.WithEthanol;

    /// <summary>The batch that the days' turn gives to a day: each product every third day, its tanks in turn.</summary>
    public static DemoBatch Of(DemoDays days, int day)
    {
        var product = DemoProduct.All[day % DemoProduct.All.Count];
        var turn = day / DemoProduct.All.Count;
        var isExport = product == DemoProduct.Plain && turn % 4 == 3;
        var instrument = DemoTesters.IsAway(day) || day / 2 % 2 == 0 ? DemoInstrumentActs.First : DemoInstrumentActs.Second;
        return new DemoBatch(
            NumberOf(days, day), product, DemoMarket.On(product, days.Day(day), isExport), product.Tanks[turn % product.Tanks.Count],
            AnalystOf(day), instrument);
    }

    public static string NumberOf(DemoDays days, int day) => FormattableString.Invariant($"{days.Day(day).Year % 100:00}-{1001 + day}");

    public static string AnalystOf(int day) => day % 2 == 0 ? DemoPeople.Ines : DemoPeople.Oskar;

    public DemoSample Sample(string name, int bottles, SampleLevel level = SampleLevel.Running) => new(
        $"{Number} {name}", Product, Number, Tank, Tank is null ? DemoReference.TransferLine : DemoReference.PointOf(Tank), level, bottles);

    /// <summary>What one bottle of it shows.</summary>
    public decimal Bottle(DemoSample sample, int container) =>
        Value + ((Product == DemoProduct.Blendstock ? NoisePsi : NoiseKpa) * DemoName.Scatter(sample.Determination(container)));
}
