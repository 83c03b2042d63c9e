using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.People;

/// <summary>The signature of whoever is on this page: their own password, checked, counted and limited.</summary>
public sealed class PasswordSignature(SignaturePassword passwords) : ISignature
{
    /// <summary>What stood against the last signature, in words; null when it was right.</summary>
    public string? Problem { get; private set; }

    public async Task<bool> IsRightAsync(Actor actor, string password, CancellationToken cancel)
    {
        Problem = actor.IsKey ? "No key can sign: a person signs in and signs." : await passwords.ProblemAsync(actor.Id, password);
        return Problem is null;
    }
}
