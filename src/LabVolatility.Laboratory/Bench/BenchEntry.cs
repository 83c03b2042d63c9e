namespace LabVolatility.Laboratory.Bench;

/// <summary>What stands in the fields of the bench, exactly as typed: the content of a draft.</summary>
public sealed record BenchEntry
{
    public int? ContainerNumber { get; init; }
    public string? Instrument { get; init; }
    public string? TotalPressure { get; init; }
    public string? Temperature { get; init; }
    public string? VaporLiquidRatio { get; init; }

    /// <summary>The gas part is worked out from three expansions; else the instrument gave it.</summary>
    public bool Expands { get; init; }

    public string? GasPressure { get; init; }

    public IReadOnlyList<ExpansionEntry> Expansions { get; init; } = [];

    public string? LiquidVolume { get; init; }

    public string? IntroductionTemperature { get; init; }

    public string? RinseCycles { get; init; }

    public string? ConsecutiveDeterminations { get; init; }

    public bool? AtEquilibrium { get; init; }
    public string? ChilledTo { get; init; }
    public string? FillPercent { get; init; }
    public bool? AirSaturated { get; init; }
    public bool? Hazy { get; init; }
    public int? Phases { get; init; }
    public IReadOnlyList<ConfirmedStep> Confirmed { get; init; } = [];
}
