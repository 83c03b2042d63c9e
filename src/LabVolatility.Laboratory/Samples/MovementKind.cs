namespace LabVolatility.Laboratory.Samples;

/// <summary>What happened to a tank's contents.</summary>
public enum MovementKind
{
    Receipt,
    Butane,
    Circulation,

    /// <summary>Product leaves; what stays is unchanged.</summary>
    Delivery,
}
