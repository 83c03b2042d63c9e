namespace LabVolatility.Web.People;

/// <summary>What the sign-in form sends.</summary>
public sealed class SignInEntry
{
    public string? UserName { get; set; }

    public string? Password { get; set; }
}
