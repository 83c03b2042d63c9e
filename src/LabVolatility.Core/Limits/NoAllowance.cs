namespace LabVolatility.Core.Limits;

/// <summary>No allowance: the maximum holds at any ethanol content.</summary>
public sealed record NoAllowance() : Allowance("", false);
