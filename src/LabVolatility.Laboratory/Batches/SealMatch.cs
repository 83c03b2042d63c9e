namespace LabVolatility.Laboratory.Batches;

/// <summary>Whether the seals that another party names are those of our containers.</summary>
public enum SealMatch
{
    NotStated,
    Matches,
    NotOurs,

    /// <summary>Our containers have no seal recorded, so there is nothing to hold theirs against.</summary>
    OursNotRecorded,
}
