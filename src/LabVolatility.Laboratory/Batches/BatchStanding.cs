namespace LabVolatility.Laboratory.Batches;

/// <summary>How a batch stands, for a list.</summary>
public enum BatchStanding
{
    /// <summary>Nobody decided on it, or the decision was withdrawn.</summary>
    Waiting,
    OnHold,

    /// <summary>Released, under concession too.</summary>
    Released,
    Rejected,

    /// <summary>Something that its decision rests on changed.</summary>
    ForReview,
}
