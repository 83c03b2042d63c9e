namespace LabVolatility.Web.People;

/// <summary>Why a session ended.</summary>
public enum SessionEnd
{
    /// <summary>Nothing was done for half an hour.</summary>
    Idle,

    /// <summary>Twelve hours are over.</summary>
    TooLong,

    /// <summary>Signed out elsewhere, or roles, password or account changed.</summary>
    AccountChanged,
}
