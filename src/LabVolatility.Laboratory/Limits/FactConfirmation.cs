using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Limits;

/// <summary>The laboratory read a shipped fact in its own copy and confirms it: the flag "from memory" goes.</summary>
public sealed class FactConfirmation : IRecorded
{
    /// <summary>The limit's or correlation's key.</summary>
    public required string Key { get; init; }
    public Guid ConfirmedBy { get; init; }
    public DateTimeOffset ConfirmedAt { get; init; }
    public required string Source { get; init; }
}
