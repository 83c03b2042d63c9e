namespace LabVolatility.Core.Limits;

/// <summary>A limit as an area applies it.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Grade">The grade it is for; null: all gasoline.</param>
/// <param name="Point">The point of compliance it is for; null: all.</param>
/// <param name="Season">The season it is for; null: all the year.</param>
/// <param name="Class">The class it is for; null: whatever class is in force.</param>
/// <param name="Ethanol">The ethanol contents it is for; null: all, also a content that wasn't measured.</param>
public sealed record AreaLimit(
    Limit Limit, string? Grade = null, PointOfCompliance? Point = null, string? Season = null, string? Class = null, EthanolRange? Ethanol = null);
