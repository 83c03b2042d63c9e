namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>What was judged.</summary>
public sealed record BatchLine
{
    public required string Number { get; init; }

    public required string Grade { get; init; }

    /// <summary>In words: "finished product", "blendstock for blending with ethanol", "hand blend".</summary>
    public required string ProductState { get; init; }

    /// <summary>Tank or tanks; for a cargo the shore tanks.</summary>
    public string? Tank { get; init; }

    /// <summary>With its unit: "4250 m³".</summary>
    public string? Volume { get; init; }

    /// <summary>For a cargo: the ship, and whether before or after loading.</summary>
    public string? Cargo { get; init; }

    /// <summary>Null prints "not measured".</summary>
    public EthanolContent? Ethanol { get; init; }
}
