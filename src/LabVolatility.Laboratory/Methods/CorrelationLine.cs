namespace LabVolatility.Laboratory.Methods;

/// <summary>A correlation with the names of those who drafted and approved it.</summary>
public sealed record CorrelationLine(CorrelationEntry Entry, string DraftedBy, string? ApprovedBy)
{
    public bool IsDraft => Entry is { ApprovedAt: null, WithdrawnAt: null };
}
