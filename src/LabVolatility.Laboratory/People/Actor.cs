using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.People;

/// <summary>The person (or key) that asks a use case to act, with the roles held at this moment.</summary>
/// <param name="Id">The person's id; a service account's for a key.</param>
/// <param name="Name">Full name as it goes into the record.</param>
/// <param name="Roles">Roles held now.</param>
/// <param name="Origin">page, interface, command or demo.</param>
/// <param name="IsKey">True for a key: it can't sign and is no operator.</param>
public sealed record Actor(Guid Id, string Name, Roles Roles, string Origin, bool IsKey = false)
{
    public bool May(Right right) => Rights.Allow(Roles, right);

    public Act Does(string name, string? reason = null) => new(Id, Name, Origin, name, reason);

    /// <summary>The refusal in words, or null when the right is held.</summary>
    public string? Lacks(Right right, string what) =>
        May(right) ? null : $"{what} is for the {Rights.HoldersText(right)}.";
}
