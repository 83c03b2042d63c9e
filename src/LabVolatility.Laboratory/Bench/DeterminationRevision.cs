using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Bench;

/// <summary>What was read and found, as reported (revision 1) or as amended, with the reason.</summary>
public sealed class DeterminationRevision : IReported
{
    public Guid Id { get; init; }
    public Guid DeterminationId { get; init; }
    public int Revision { get; init; }
    public DateTimeOffset At { get; init; }
    public Guid By { get; init; }
    public required string ByName { get; init; }

    /// <summary>Why it was amended; due from revision 2 on.</summary>
    public string? Reason { get; init; }

    /// <summary>Set aside for a recorded assignable cause: it stays visible and no longer counts.</summary>
    public bool SetAside { get; init; }
    public string? AssignableCause { get; init; }
    public required ReadingsAsTyped Readings { get; init; }
    public required HandlingAsTyped Handling { get; init; }
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}
