using LabVolatility.Laboratory.Certificates.Documents;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>A cargo certificate with all that its page shows.</summary>
/// <param name="Content">The latest revision, as issued.</param>
/// <param name="Revisions">The latest first.</param>
/// <param name="Lost">What the latest one no longer covers.</param>
public sealed record CargoSheet(CargoContent Content, IReadOnlyList<ReadCertificates.Line> Revisions, IReadOnlyList<NotCovered> Lost);
