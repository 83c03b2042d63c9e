namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>One shore tank with its one vapour pressure.</summary>
public sealed record CargoTankLine
{
    public required string Tank { get; init; }

    public required string Batch { get; init; }

    public required string Grade { get; init; }

    /// <summary>With its unit; null where it is not recorded.</summary>
    public string? Volume { get; init; }

    /// <summary>"released" or "released under concession".</summary>
    public required string Decision { get; init; }

    public required string DecidedBy { get; init; }

    public required DateTimeOffset DecidedAt { get; init; }

    public required string Quantity { get; init; }

    /// <summary>At the method's resolution, with its zeros.</summary>
    public required string Reported { get; init; }

    /// <summary>"H" where a sample was hazy, else empty.</summary>
    public string Suffix { get; init; } = string.Empty;

    public required string Unit { get; init; }

    /// <summary>Designation and edition.</summary>
    public required string Method { get; init; }

    public string? Correlation { get; init; }

    public required IReadOnlyList<CargoSampleLine> Samples { get; init; }

    public required DateTimeOffset MeasuredAt { get; init; }

    /// <summary>The edges that this vapour pressure was held against.</summary>
    public required IReadOnlyList<LimitLine> Limits { get; init; }

    public ConcessionNotice? Concession { get; init; }
}
