namespace LabVolatility.Laboratory.Bench;

/// <summary>How the sample was handled before the reading, as the analyst confirmed it.</summary>
public sealed record HandlingAsTyped
{
    public TypedReading? ChilledTo { get; init; }
    public bool? AirSaturated { get; init; }
    public decimal? FillPercent { get; init; }
    public bool Hazy { get; init; }
    public int Phases { get; init; } = 1;

    /// <summary>Codes of the handling steps and cautions that were confirmed, with the moment of each.</summary>
    public IReadOnlyList<ConfirmedStep> Confirmed { get; init; } = [];
}
