namespace LabVolatility.Core.Precision;

/// <summary>What to do after a set of results was judged.</summary>
public enum NextStep
{
    /// <summary>Report the mean.</summary>
    Report,

    /// <summary>Take more results, each from its own container.</summary>
    More,

    /// <summary>Stop, and find the cause.</summary>
    Investigate,
}
