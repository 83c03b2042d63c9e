using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

public sealed class SamplePoint : IRecorded
{
    public required string Code { get; init; }
    public required string Name { get; set; }
    public string? TankCode { get; set; }
}
