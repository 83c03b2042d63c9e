namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>All that stands on a certificate, as it was when it was issued; frozen as JSON beside its PDF.</summary>
/// <remarks>Times are instants; the paper shows them in <see cref="TimeZone"/>. Figures are the text as reported.</remarks>
public sealed record CertificateContent
{
    public required string LaboratoryName { get; init; }

    public string? LaboratoryPlace { get; init; }

    /// <summary>A name of the time zone database, such as "Europe/Prague", or "UTC".</summary>
    public required string TimeZone { get; init; }

    /// <summary>Letters, digits and signs of ASCII; it is drawn as a bar code too.</summary>
    public required string Number { get; init; }

    /// <summary>1 for the first issue.</summary>
    public required int Revision { get; init; }

    public required DateTimeOffset IssuedAt { get; init; }

    public string? Customer { get; init; }

    /// <summary>The decision in words: "Released", "Released under concession".</summary>
    public required string Decision { get; init; }

    public required string CheckCode { get; init; }

    /// <summary>Base address and path where a recipient can check the certificate.</summary>
    public required string CheckAddress { get; init; }

    public IReadOnlyList<ReplacedCertificate> Replaces { get; init; } = [];

    public ReplacedCertificate? ReplacedBy { get; init; }

    public WithdrawalNotice? Withdrawal { get; init; }

    public ConcessionNotice? Concession { get; init; }

    public required BatchLine Batch { get; init; }

    public IReadOnlyList<SampleLine> Samples { get; init; } = [];

    /// <summary>True where the laboratory did not draw the samples itself.</summary>
    public bool SamplesAsReceived { get; init; }

    public IReadOnlyList<DestinationLine> Destinations { get; init; } = [];

    public IReadOnlyList<ResultLine> Results { get; init; } = [];

    public IReadOnlyList<LimitLine> Limits { get; init; } = [];

    public IReadOnlyList<RemarkLine> Remarks { get; init; } = [];

    public IReadOnlyList<AmendmentLine> Amendments { get; init; } = [];

    public required SignatureLine Signature { get; init; }
}
