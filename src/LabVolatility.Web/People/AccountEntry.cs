namespace LabVolatility.Web.People;

/// <summary>What the forms of the account page send.</summary>
public sealed class AccountEntry
{
    public string? Password { get; set; }

    public string? NewPassword { get; set; }

    public string? Again { get; set; }

    public string? Theme { get; set; }
}
