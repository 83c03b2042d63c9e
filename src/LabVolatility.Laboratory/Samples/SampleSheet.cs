using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Everything about one sample.</summary>
public sealed record SampleSheet
{
    public required Sample Sample { get; init; }
    public required string GradeName { get; init; }
    public string? Batch { get; init; }
    public required IReadOnlyList<ContainerSheet> Containers { get; init; }

    /// <summary>As they stand now, the first measured first.</summary>
    public required IReadOnlyList<DeterminationState> Determinations { get; init; }

    /// <summary>Why it is void for a decision; null when it stands.</summary>
    public string? Void { get; init; }

    /// <summary>Its batch has a decision in force: who may amend changes.</summary>
    public bool BatchDecided { get; init; }

    /// <summary>Names of the people who touched it.</summary>
    public required IReadOnlyDictionary<Guid, string> Names { get; init; }

    public string NameOf(Guid? id) => id is { } known ? Names.GetValueOrDefault(known, "an account no longer known") : "nobody";
}
