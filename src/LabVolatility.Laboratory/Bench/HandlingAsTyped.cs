namespace LabVolatility.Laboratory.Bench;

/// <summary>How the sample was handled before the reading, as the analyst confirmed it.</summary>
public sealed record HandlingAsTyped
{
    public TypedReading? ChilledTo { get; init; }
    public bool? AirSaturated { get; init; }
    public decimal? FillPercent { get; init; }
    public bool Hazy { get; init; }
    public int Phases { get; init; } = 1;

    /// <summary>Whether each pressure stood still when it was read; null where nobody said.</summary>
    public bool? AtEquilibrium { get; init; }

    /// <summary>The instrument's setting: rinses with the sample before the specimen was taken in.</summary>
    public int? RinseCycles { get; init; }

    /// <summary>The instrument's setting: how many times it ran the test on the container.</summary>
    public int? ConsecutiveDeterminations { get; init; }

    /// <summary>Codes of the handling steps and cautions that were confirmed, with the moment of each.</summary>
    public IReadOnlyList<ConfirmedStep> Confirmed { get; init; } = [];
}
