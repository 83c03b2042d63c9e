namespace LabVolatility.Laboratory.Limits;

/// <summary>A version of a limit with the names of those who drafted and approved it.</summary>
public sealed record LimitVersion(LaboratoryLimit Limit, string DraftedBy, string? ApprovedBy);
