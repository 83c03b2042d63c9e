using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>Raw values of one determination, each in the unit it was read in; null where not read.</summary>
public sealed record Readings
{
    /// <summary>The total pressure, with no correction of the instrument's own.</summary>
    public AbsolutePressure? TotalPressure { get; init; }

    /// <summary>The chamber's temperature.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>The vapour-liquid ratio.</summary>
    public decimal? VaporLiquidRatio { get; init; }

    /// <summary>The temperature at which the specimen was taken in.</summary>
    public Temperature? IntroductionTemperature { get; init; }

    /// <summary>The air pressure in the laboratory.</summary>
    public AbsolutePressure? BarometricPressure { get; init; }

    /// <summary>The temperature of the sample when its container was opened.</summary>
    public Temperature? ChilledTo { get; init; }

    /// <summary>Whether the pressure stood still when it was read.</summary>
    public bool? AtEquilibrium { get; init; }

    /// <summary>Whether this was the first test on the container.</summary>
    public bool? FirstTestOnContainer { get; init; }
}
