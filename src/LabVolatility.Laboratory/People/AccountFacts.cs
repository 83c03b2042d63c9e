namespace LabVolatility.Laboratory.People;

/// <summary>What a person's own pages need: name, roles held now, and the theme chosen.</summary>
public sealed record AccountFacts(Guid Id, string UserName, string FullName, Roles Roles, string? Theme, DateTimeOffset? PasswordSetAt);
