namespace LabVolatility.Laboratory.Bench;

/// <summary>What stands in the fields of the bench, exactly as typed: the content of a draft.</summary>
public sealed record BenchEntry
{
    public int? ContainerNumber { get; init; }
    public string? Instrument { get; init; }
    public string? TotalPressure { get; init; }
    public string? Temperature { get; init; }
    public string? VaporLiquidRatio { get; init; }
    public string? ChilledTo { get; init; }
    public string? FillPercent { get; init; }
    public bool? AirSaturated { get; init; }
    public bool? Hazy { get; init; }
    public int? Phases { get; init; }
    public IReadOnlyList<ConfirmedStep> Confirmed { get; init; } = [];
}
