using LabVolatility.Laboratory.People;

namespace LabVolatility.Laboratory.Demo;

/// <summary>An invented person of the demo laboratory; the password is no secret and opens nothing else.</summary>
public sealed record DemoPerson(string UserName, string FullName, Roles Roles, string Password)
{
    /// <summary>The roles as the sign-in page lists them: "shift chemist, quality manager".</summary>
    public string RolesInWords => RoleNames.Text(Roles);
}
