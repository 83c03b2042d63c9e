namespace LabVolatility.Core.Limits;

/// <summary>What is to be judged.</summary>
public enum ProductState
{
    /// <summary>The finished product.</summary>
    Finished,

    /// <summary>A blendstock to be blended with ethanol later; judged on its own, without an allowance.</summary>
    Blendstock,

    /// <summary>A blend made cold at the bench from a recorded recipe.</summary>
    HandBlend,
}
