using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The ethanol content of a hand blend as it was measured; the latest counts.</summary>
public sealed class BlendContent : IReported
{
    public Guid Id { get; init; }
    public Guid SampleId { get; init; }

    /// <summary>% (V/V).</summary>
    public decimal EthanolPercent { get; init; }

    /// <summary>How it was found: an allowance needs a measured content.</summary>
    public required string Method { get; init; }

    public DateTimeOffset At { get; init; }
    public Guid By { get; init; }
}
