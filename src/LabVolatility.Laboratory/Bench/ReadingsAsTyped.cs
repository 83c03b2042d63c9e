namespace LabVolatility.Laboratory.Bench;

/// <summary>The raw values of one determination.</summary>
public sealed record ReadingsAsTyped
{
    public TypedReading? TotalPressure { get; init; }
    public TypedReading? Temperature { get; init; }
    public TypedReading? VaporLiquidRatio { get; init; }
    public TypedReading? BarometricPressure { get; init; }
}
