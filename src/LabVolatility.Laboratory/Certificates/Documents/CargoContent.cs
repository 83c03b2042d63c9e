namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>All that stands on a cargo certificate, as it was when it was issued; frozen as JSON beside its PDF.</summary>
/// <remarks>Times are instants; the paper shows them in <see cref="TimeZone"/>. Figures are the text as reported.</remarks>
public sealed record CargoContent
{
    public required string LaboratoryName { get; init; }

    public string? LaboratoryPlace { get; init; }

    public required string TimeZone { get; init; }

    public required string Number { get; init; }

    /// <summary>1 for the first issue.</summary>
    public required int Revision { get; init; }

    public required DateTimeOffset IssuedAt { get; init; }

    public required string CheckCode { get; init; }

    public required string CheckAddress { get; init; }

    public ReplacedCertificate? Replaces { get; init; }

    public required string Ship { get; init; }

    public required string Voyage { get; init; }

    public required string Port { get; init; }

    public string? Berth { get; init; }

    /// <summary>"before loading" or "after loading".</summary>
    public required string Stage { get; init; }

    public required string Product { get; init; }

    public string? WhyGradesDiffer { get; init; }

    public string? Reference { get; init; }

    public string? Remarks { get; init; }

    public required IReadOnlyList<CargoTankLine> Tanks { get; init; }

    public required SignatureLine Signature { get; init; }
}
