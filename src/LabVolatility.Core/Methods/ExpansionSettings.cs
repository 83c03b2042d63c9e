using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>How an instrument is set that expands the specimen itself and takes the gas part off.</summary>
/// <param name="RinseCycles">Rinses with the sample before the specimen is taken in.</param>
/// <param name="UsualIntroduction">The temperature of taking in that laboratories use.</param>
/// <param name="LowestIntroduction">The lowest that the method takes, included.</param>
/// <param name="HighestIntroduction">The highest that the method takes, included.</param>
/// <param name="Source">Where the range is laid down.</param>
public sealed record ExpansionSettings(
    int RinseCycles, Temperature UsualIntroduction, Temperature LowestIntroduction, Temperature HighestIntroduction, string Source);
