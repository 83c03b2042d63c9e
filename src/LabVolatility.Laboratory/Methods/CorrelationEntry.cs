using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Methods;

/// <summary>A correlation as the laboratory entered it from its own copy: DVPE = a · Ptot + b · Pgas + c.</summary>
public sealed class CorrelationEntry : IRecorded
{
    public Guid Id { get; init; }

    /// <summary>1, 2, … in this laboratory; a result cites it for ever.</summary>
    public int Number { get; init; }

    public required string Method { get; init; }

    /// <summary>a, dimensionless.</summary>
    public decimal TotalSlope { get; init; }

    /// <summary>b, dimensionless; −a where the correlation takes the vapour pressure free of gas.</summary>
    public decimal GasSlope { get; init; }

    /// <summary>c, in <see cref="Unit"/>.</summary>
    public decimal Constant { get; init; }

    public PressureUnit Unit { get; init; }

    /// <summary>First local day of measuring that it is for.</summary>
    public DateOnly From { get; init; }

    /// <summary>Last local day of measuring that it is for; null: until further notice.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>Where the laboratory read it: designation, edition, clause.</summary>
    public required string Source { get; init; }

    public Guid DraftedBy { get; init; }

    public DateTimeOffset DraftedAt { get; init; }

    public Guid? ApprovedBy { get; set; }

    public DateTimeOffset? ApprovedAt { get; set; }

    public DateTimeOffset? WithdrawnAt { get; set; }

    public Guid Version { get; set; }
}
