namespace LabVolatility.Core.Quantities;

/// <summary>The decimals a vapour pressure is reported with in each unit.</summary>
/// <remarks>
/// Source: 0.1 kPa and 0.01 psi are the methods' own (ASTM D5191-22 published; EN 13016-1 from memory); the
/// other units take the decade nearest to those, which is common practice.
/// </remarks>
public static class PressureResolution
{
    /// <summary>Decimals in <paramref name="unit"/>; negative where whole tens or hundreds are reported.</summary>
    public static int Places(PressureUnit unit) => unit switch
    {
        PressureUnit.Kilopascal => 1,
        PressureUnit.Pascal => -2,
        PressureUnit.Psi => 2,
        PressureUnit.Bar => 3,
        PressureUnit.Millibar => 0,
        PressureUnit.MillimetreOfMercury => 0,
        PressureUnit.InchOfMercury => 2,
        PressureUnit.Atmosphere => 3,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such pressure unit."),
    };
}
