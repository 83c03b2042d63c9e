namespace LabVolatility.Web.People;

/// <summary>What the form for the first account sends.</summary>
public sealed class FirstEntry
{
    public string? Code { get; set; }

    public string? UserName { get; set; }

    public string? FullName { get; set; }

    public string? Password { get; set; }
}
