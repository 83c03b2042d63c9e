namespace LabVolatility.Laboratory.Certificates;

/// <summary>A shore tank and the batch in it.</summary>
/// <param name="Tank">Code of the tank.</param>
/// <param name="Batch">Number of the batch.</param>
/// <param name="Decision">The release that the signer saw.</param>
public sealed record CargoTankRequest(string? Tank, string? Batch, Guid Decision);
