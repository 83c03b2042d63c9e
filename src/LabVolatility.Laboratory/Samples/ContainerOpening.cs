using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A container was opened: light ends leave at each opening.</summary>
public sealed class ContainerOpening : IReported
{
    public Guid Id { get; init; }
    public Guid ContainerId { get; init; }
    public DateTimeOffset At { get; init; }
    public Guid? By { get; init; }
    public required string Why { get; init; }
}
