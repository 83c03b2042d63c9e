namespace LabVolatility.Core.Limits;

/// <summary>What stands behind a limit.</summary>
public enum Standing
{
    /// <summary>Law: no concession can be made against it.</summary>
    Legal,

    /// <summary>An agreement with the customer, or a specification.</summary>
    Contract,

    /// <summary>The laboratory's or the refinery's own margin.</summary>
    Internal,
}
