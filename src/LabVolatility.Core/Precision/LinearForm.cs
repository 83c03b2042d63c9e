namespace LabVolatility.Core.Precision;

/// <summary>A precision figure that grows with the level: Constant + Slope · X.</summary>
/// <param name="Constant">In the statement's unit.</param>
/// <param name="Slope">Dimensionless.</param>
public sealed record LinearForm(decimal Constant, decimal Slope)
{
    /// <summary>The figure at a level in the statement's unit, not rounded.</summary>
    public decimal At(decimal level) => Constant + (Slope * level);
}
