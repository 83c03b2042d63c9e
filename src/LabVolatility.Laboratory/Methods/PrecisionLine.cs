namespace LabVolatility.Laboratory.Methods;

/// <summary>A precision entry with the names of those who drafted and approved it.</summary>
public sealed record PrecisionLine(PrecisionEntry Entry, string DraftedBy, string? ApprovedBy)
{
    public bool IsDraft => Entry is { ApprovedAt: null, WithdrawnAt: null };

    public bool InForce => Entry is { ApprovedAt: not null, WithdrawnAt: null };
}
