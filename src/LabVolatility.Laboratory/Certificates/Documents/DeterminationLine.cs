namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>One run on an instrument.</summary>
public sealed record DeterminationLine
{
    public required string Container { get; init; }

    /// <summary>The value of this run in the result's unit, as reported, with its suffix.</summary>
    public required string Value { get; init; }

    public required string Instrument { get; init; }

    public required DateTimeOffset MeasuredAt { get; init; }

    public required string MeasuredBy { get; init; }

    /// <summary>The recorded assignable cause; null where the value counts.</summary>
    public string? SetAsideBecause { get; init; }
}
