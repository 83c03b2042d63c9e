namespace LabVolatility.Laboratory.Setup;

/// <summary>What is needed to make a key of the machine interface.</summary>
/// <param name="Name">What the key is for: "planning system".</param>
/// <param name="OwnerId">The account that answers for it.</param>
/// <param name="Scopes">What it opens.</param>
/// <param name="Days">How long it lasts.</param>
public sealed record NewKey(string Name, Guid OwnerId, KeyScopes Scopes, int Days);
