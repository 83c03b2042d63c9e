namespace LabVolatility.Core.Quantities;

/// <summary>The units a volume may be given in.</summary>
public enum VolumeUnit
{
    /// <summary>mL.</summary>
    Millilitre,

    /// <summary>L.</summary>
    Litre,

    /// <summary>m³.</summary>
    CubicMetre,

    /// <summary>bbl: 42 US gallons.</summary>
    Barrel,
}
