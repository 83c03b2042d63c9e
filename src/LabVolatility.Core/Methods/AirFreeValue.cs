using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>The vapour pressure of a pure check fluid, free of air, at 37.8 °C: what a triple expansion should find.</summary>
/// <param name="Fluid">Its name.</param>
/// <param name="Value">The expected value; the band around it is the laboratory's own, since none is public.</param>
/// <param name="Source">Where the value comes from.</param>
public sealed record AirFreeValue(string Fluid, AbsolutePressure Value, string Source)
{
    private const string Handbooks = "median of handbook equations (Poling; McGarry; Perry 2-8; VDI heat atlas)";

    /// <summary>The fluids that the methods by triple expansion are checked with.</summary>
    /// <remarks>They lie about 5 to 6 kPa below the totals of the same fluids saturated with air.</remarks>
    public static IReadOnlyList<AirFreeValue> All { get; } =
    [
        Of("n-pentane", 107.46m),
        Of("cyclopentane", 68.43m),
        Of("2,2-dimethylbutane", 68.00m),
        Of("2,3-dimethylbutane", 51.13m),
        Of("toluene", 7.124m),
    ];

    private static AirFreeValue Of(string fluid, decimal kpa) => new(fluid, AbsolutePressure.From(kpa, PressureUnit.Kilopascal), Handbooks);
}
