namespace LabVolatility.Laboratory.Samples;

/// <summary>What a step of the tree asks for.</summary>
public enum RetestKind
{
    /// <summary>Further sealed containers of the same sample; every valid result counts.</summary>
    MoreContainers,

    /// <summary>New samples at the same levels.</summary>
    Resample,

    /// <summary>The tank is mixed, then sampled again at the same levels.</summary>
    MixAndResample,

    /// <summary>A laboratory that neither party runs.</summary>
    ThirdLaboratory,

    /// <summary>The end of every branch: hold, and call the quality manager.</summary>
    HoldAndCall,
}
