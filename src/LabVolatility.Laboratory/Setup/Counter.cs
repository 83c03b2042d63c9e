namespace LabVolatility.Laboratory.Setup;

/// <summary>The last number given out under a name; a number is never given twice.</summary>
public sealed class Counter
{
    public required string Name { get; init; }
    public long Value { get; set; }
}
