namespace LabVolatility.Core.Methods;

/// <summary>Whose correlation turns a total pressure into the reported quantity.</summary>
public enum Authority
{
    /// <summary>The test method of ASTM.</summary>
    Astm,

    /// <summary>The European standard.</summary>
    En,

    /// <summary>The United States environmental agency.</summary>
    Epa,

    /// <summary>The Californian air board.</summary>
    Carb,
}
