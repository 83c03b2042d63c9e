using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>A shore tank of a cargo, its batch, and the release that its vapour pressure is taken from.</summary>
public sealed class CargoTank : IReported
{
    public Guid Id { get; init; }
    public Guid CertificateId { get; init; }

    /// <summary>1, 2, … as on the paper.</summary>
    public int Place { get; init; }
    public required string TankCode { get; init; }
    public Guid BatchId { get; init; }
    public Guid DecisionId { get; init; }
}
