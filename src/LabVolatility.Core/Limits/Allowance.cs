namespace LabVolatility.Core.Limits;

/// <summary>What a limit grants above its maximum for ethanol in the product.</summary>
/// <param name="Source">Where it is laid down; empty where there is none.</param>
/// <param name="RequiresDerogation">Whether the area must have been granted a derogation for it.</param>
public abstract record Allowance(string Source, bool RequiresDerogation);
