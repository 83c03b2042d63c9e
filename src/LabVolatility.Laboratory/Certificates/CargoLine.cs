namespace LabVolatility.Laboratory.Certificates;

/// <summary>A cargo certificate as a line of a list: its latest revision.</summary>
public sealed record CargoLine
{
    public required string Number { get; init; }
    public required int Revision { get; init; }
    public required string Ship { get; init; }
    public required string Voyage { get; init; }
    public required string Port { get; init; }
    public required string Product { get; init; }
    public required LoadingStage Stage { get; init; }
    public required DateTimeOffset IssuedAt { get; init; }
    public required string SignedBy { get; init; }

    /// <summary>"T-101 (batch 26-1042)".</summary>
    public required IReadOnlyList<string> Tanks { get; init; }

    /// <summary>What it no longer covers; empty while it covers all its tanks.</summary>
    public required IReadOnlyList<NotCovered> Lost { get; init; }
}
