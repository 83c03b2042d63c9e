namespace LabVolatility.Core.Methods;

/// <summary>What a sample is kept in.</summary>
public enum ContainerKind
{
    /// <summary>A glass bottle.</summary>
    GlassBottle,

    /// <summary>A metal can or bottle.</summary>
    MetalCan,

    /// <summary>A plastic bottle.</summary>
    PlasticBottle,

    /// <summary>A cylinder whose piston floats on a gas.</summary>
    FloatingPistonCylinder,

    /// <summary>A cylinder whose piston is moved by hand.</summary>
    ManualPistonCylinder,

    /// <summary>A cylinder without a piston, for liquefied gas.</summary>
    PressureCylinder,
}
