namespace LabVolatility.Web.Layout;

/// <summary>The status words, each with its one shape and colour.</summary>
public enum Mark
{
    Ready,
    ReadyWithWarning,
    NotReady,
    Conforms,
    DoesNotConform,
    NotDecided,
    Incomplete,
    NoLimit,
    Released,
    Concession,
    OnHold,
    Rejected,
    Withdrawn,
    Undecided,
    InBand,
    OutOfBand,
    InControl,
    Signal,
    Draft,
    Waiting,
    Done,
    ForReview,
    FromMemory,
    Published,
    CommonPractice,
    LaboratoryOwn,
    NotSet,
    Void,
}
