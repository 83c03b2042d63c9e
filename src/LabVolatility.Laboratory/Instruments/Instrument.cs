using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Instruments;

public sealed class Instrument : IRecorded
{
    public required string Code { get; init; }
    public required string Name { get; set; }
    public string? SerialNumber { get; set; }
    public string? Location { get; set; }
    public IReadOnlyList<string> Methods { get; set; } = [];
    public bool InService { get; set; } = true;
    public string? OutOfServiceReason { get; set; }
    public DateOnly? CalibratedOn { get; set; }
    public DateOnly? CalibrationDueOn { get; set; }

    /// <summary>Verified range of total pressure, absolute.</summary>
    public decimal? LowKpa { get; set; }
    public decimal? HighKpa { get; set; }
    public Guid Version { get; set; }
}
