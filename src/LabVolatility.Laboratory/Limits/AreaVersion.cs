namespace LabVolatility.Laboratory.Limits;

/// <summary>A version of an area with the names of those who drafted and approved it.</summary>
public sealed record AreaVersion(LaboratoryArea Area, string DraftedBy, string? ApprovedBy);
