namespace LabVolatility.Web.People;

/// <summary>How long a sign-in lasts: half an hour without a deed, a shift at most.</summary>
public static class SessionTimes
{
    public static readonly TimeSpan Idle = TimeSpan.FromMinutes(30);
    public static readonly TimeSpan Longest = TimeSpan.FromHours(12);

    /// <summary>How long a look at the account is believed.</summary>
    public static readonly TimeSpan Believed = TimeSpan.FromSeconds(5);

    /// <summary>How often an open page is checked when nobody does anything.</summary>
    public static readonly TimeSpan BetweenChecks = TimeSpan.FromSeconds(30);
}
