using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

public sealed class Tank : IRecorded
{
    public required string Code { get; init; }
    public required string Name { get; set; }
    public string? GradeCode { get; set; }
    public decimal? CapacityCubicMetres { get; set; }
    public Guid Version { get; set; }
}
