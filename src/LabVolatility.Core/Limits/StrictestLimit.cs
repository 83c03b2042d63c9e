namespace LabVolatility.Core.Limits;

/// <summary>What several limits of one quantity leave, taken together.</summary>
/// <param name="Quantity">The quantity.</param>
/// <param name="Correlation">The correlation or the method that the limits ask for.</param>
/// <param name="Minimum">The limit whose minimum binds; null: none has one.</param>
/// <param name="Maximum">The limit whose maximum binds; null: none has one.</param>
/// <param name="IsEmpty">Whether no value can meet both.</param>
/// <param name="Why">Which binds; where nothing is left, which clash and what to do.</param>
public sealed record StrictestLimit(
    string Quantity, string Correlation, PickedLimit? Minimum, PickedLimit? Maximum, bool IsEmpty, string Why);
