namespace LabVolatility.Core.Limits;

/// <summary>What an assessment says.</summary>
public enum Outcome
{
    /// <summary>Within the limit.</summary>
    Conforms,

    /// <summary>Beyond the limit.</summary>
    DoesNotConform,

    /// <summary>Inside the zone that the measurement can't decide.</summary>
    NotDecided,

    /// <summary>There is no result that may answer the limit.</summary>
    Incomplete,

    /// <summary>No limit is in force then and there.</summary>
    NoLimit,
}
