namespace LabVolatility.Laboratory.Records;

/// <summary>A command that was done, so that the same one sent again does nothing twice.</summary>
public sealed class PerformedCommand
{
    public Guid Id { get; init; }
    public required string Name { get; init; }
    public required string Subject { get; init; }
    public DateTimeOffset At { get; init; }
}
