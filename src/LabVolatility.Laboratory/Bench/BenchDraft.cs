namespace LabVolatility.Laboratory.Bench;

/// <summary>What an analyst has typed so far, as typed: no record yet.</summary>
public sealed class BenchDraft
{
    public Guid Id { get; init; }
    public Guid TestId { get; init; }
    public Guid PersonId { get; init; }
    public required string Content { get; set; }
    public DateTimeOffset SavedAt { get; set; }
}
