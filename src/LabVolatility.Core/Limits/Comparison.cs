namespace LabVolatility.Core.Limits;

/// <summary>What is compared under the simple rule.</summary>
public enum Comparison
{
    /// <summary>The value rounded to the decimals of the limit.</summary>
    Rounding,

    /// <summary>The value as it is.</summary>
    Absolute,
}
