using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Batches;

/// <summary>The recipe of a sample that was made at the bench, as evidence.</summary>
/// <param name="Blendstock">Number of the blendstock sample.</param>
/// <param name="Container">Its container that was used up.</param>
/// <param name="EthanolLot">The lot of ethanol.</param>
/// <param name="BlendstockVolume">As typed.</param>
/// <param name="EthanolVolume">As typed.</param>
/// <param name="Temperature">Of the blend as it was closed, as typed.</param>
/// <param name="Nominal">The content that the recipe makes, with its arithmetic.</param>
/// <param name="MadeAt">When.</param>
/// <param name="MadeBy">By whom.</param>
/// <param name="EthanolPercent">Measured, % (V/V); null: not measured, and no allowance then.</param>
/// <param name="EthanolMethod">How it was measured.</param>
public sealed record HandBlendEvidence(
    string Blendstock, int Container, string EthanolLot, string BlendstockVolume, string EthanolVolume, string Temperature,
    ArithmeticStep Nominal, DateTimeOffset MadeAt, string MadeBy, decimal? EthanolPercent, string? EthanolMethod);
