using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.People;

/// <summary>Opens an account from the command line: "user add NAME --role ROLE".</summary>
public sealed class UserAdd(AddPerson add)
{
    /// <param name="userName">The sign-in name; stands for the full name until the administrator enters it.</param>
    /// <param name="role">A role as typed, such as "shift-chemist".</param>
    public async Task<Answer<PersonAdded>> Run(string userName, string role, CancellationToken cancellationToken = default)
    {
        if (!RoleNames.TryParse(role, out var parsed))
            return Answer<PersonAdded>.Invalid(new Problem("/role", $"\"{role}\" is no role. Roles are: {string.Join(", ", RoleNames.All.Select(r => r.Name))}."));
        var act = new Act(null, "command line", "command", "open account");
        return await add.Add(act, new NewPerson(userName, userName, parsed), cancellationToken);
    }
}
