using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Instruments;

/// <summary>One reading of a verification fluid, judged against its band.</summary>
public sealed class Verification : IReported
{
    public Guid Id { get; init; }
    public required string InstrumentCode { get; init; }

    /// <summary>The laboratory's local day that it speaks for.</summary>
    public DateOnly On { get; init; }
    public DateTimeOffset At { get; init; }
    public Guid By { get; init; }
    public required string Fluid { get; init; }
    public string? Lot { get; init; }
    public string? Typed { get; init; }
    public decimal? ReadingKpa { get; init; }
    public decimal? BandLowKpa { get; init; }
    public decimal? BandHighKpa { get; init; }
    public bool InBand { get; init; }
    public string? Note { get; init; }
}
