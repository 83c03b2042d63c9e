namespace LabVolatility.Laboratory.Bench;

/// <summary>The raw values of one determination.</summary>
public sealed record ReadingsAsTyped
{
    public TypedReading? TotalPressure { get; init; }
    public TypedReading? Temperature { get; init; }
    public TypedReading? VaporLiquidRatio { get; init; }

    /// <summary>The gas part at the test temperature, as the instrument gives it.</summary>
    public TypedReading? GasPressure { get; init; }

    /// <summary>The expansions, where the gas part is worked out here; empty where it isn't.</summary>
    public IReadOnlyList<ExpansionAsTyped> Expansions { get; init; } = [];

    public TypedReading? LiquidVolume { get; init; }

    public TypedReading? IntroductionTemperature { get; init; }
    public TypedReading? BarometricPressure { get; init; }
}
