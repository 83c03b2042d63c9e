namespace LabVolatility.Core.Methods;

/// <summary>What a sample is.</summary>
public enum SampleKind
{
    /// <summary>Gasoline without ethanol, or the finished grade.</summary>
    Gasoline,

    /// <summary>Gasoline blended with ethanol.</summary>
    EthanolBlend,

    /// <summary>Crude oil that may give off gas at the air.</summary>
    CrudeLive,

    /// <summary>Crude oil at rest at the air.</summary>
    CrudeDead,

    /// <summary>Liquefied petroleum gas.</summary>
    Lpg,

    /// <summary>A solvent.</summary>
    Solvent,

    /// <summary>Aviation turbine fuel.</summary>
    AviationTurbine,

    /// <summary>A pure compound, such as a check standard.</summary>
    PureCompound,
}
