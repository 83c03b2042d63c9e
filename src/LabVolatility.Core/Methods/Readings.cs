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

    /// <summary>The gas part of the total pressure at the test temperature, where the instrument gives it; never rescaled.</summary>
    public AbsolutePressure? GasPressure { get; init; }

    /// <summary>The expansions of the specimen, where the gas part is worked out here; empty where it isn't.</summary>
    public IReadOnlyList<Expansion> Expansions { get; init; } = [];

    /// <summary>The specimen's volume, with expansions.</summary>
    public Volume? LiquidVolume { get; init; }

    /// <summary>The temperature at which the specimen was taken in.</summary>
    public Temperature? IntroductionTemperature { get; init; }

    /// <summary>How many times the chamber was rinsed with the sample.</summary>
    public int? RinseCycles { get; init; }

    /// <summary>How many times the instrument ran the test on the container.</summary>
    public int? ConsecutiveDeterminations { get; init; }

    /// <summary>The air pressure in the laboratory.</summary>
    public AbsolutePressure? BarometricPressure { get; init; }

    /// <summary>The temperature of the sample when its container was opened.</summary>
    public Temperature? ChilledTo { get; init; }

    /// <summary>Whether the pressure stood still when it was read.</summary>
    public bool? AtEquilibrium { get; init; }

    /// <summary>Whether this was the first test on the container.</summary>
    public bool? FirstTestOnContainer { get; init; }

    /// <summary>The expansions with their temperatures; null where one of them is missing.</summary>
    public ExpansionRun? Run =>
        Expansions.Count > 0 && IntroductionTemperature is { } introduction && Temperature is { } test
            ? new(Expansions, LiquidVolume, introduction, test)
            : null;
}
