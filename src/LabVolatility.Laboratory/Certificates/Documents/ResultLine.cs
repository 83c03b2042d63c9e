namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>One reported quantity of one sample.</summary>
public sealed record ResultLine
{
    public required string SampleNumber { get; init; }

    /// <summary>The standards' own symbol: "DVPE", "VP4", "VPCR4".</summary>
    public required string Quantity { get; init; }

    /// <summary>At the method's resolution, with its zeros.</summary>
    public required string Reported { get; init; }

    /// <summary>"H" for a hazy sample, else empty.</summary>
    public string Suffix { get; init; } = string.Empty;

    public required string Unit { get; init; }

    /// <summary>Designation and edition: "ASTM D5191-22".</summary>
    public required string Method { get; init; }

    public string? Correlation { get; init; }

    /// <summary>In words, with its source: "R = 2.1 kPa"; null where it is not set.</summary>
    public string? Precision { get; init; }

    /// <summary>The other party where the result is not this laboratory's own.</summary>
    public string? ReportedBy { get; init; }

    public IReadOnlyList<DeterminationLine> Determinations { get; init; } = [];
}
