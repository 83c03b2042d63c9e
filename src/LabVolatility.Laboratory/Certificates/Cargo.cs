using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>What a cargo certificate is about: the ship, and shore tanks with a released batch each.</summary>
public sealed class Cargo : IReported
{
    public Guid CertificateId { get; init; }
    public required string Ship { get; init; }
    public required string Voyage { get; init; }
    public required string Port { get; init; }
    public string? Berth { get; init; }
    public LoadingStage Stage { get; init; }

    /// <summary>The product as the papers of the cargo name it.</summary>
    public required string Product { get; init; }

    /// <summary>Why tanks of unlike grades stand on one certificate; null where the grade is one.</summary>
    public string? WhyGradesDiffer { get; init; }

    /// <summary>Bill of lading, nomination or order, as the parties number it.</summary>
    public string? Reference { get; init; }
    public string? Remarks { get; init; }
    public List<CargoTank> Tanks { get; init; } = [];
}
