namespace LabVolatility.Laboratory.People;

/// <summary>Somebody who may sign decisions.</summary>
/// <param name="Id">The person.</param>
/// <param name="Name">Full name.</param>
/// <param name="Roles">Roles held now.</param>
/// <param name="Phone">How to reach them; null where they are not on call now.</param>
/// <param name="OnCallUntil">When the turn ends; null where they are not on call now.</param>
public sealed record Signer(Guid Id, string Name, Roles Roles, string? Phone, DateTimeOffset? OnCallUntil);
