using LabVolatility.Laboratory.People;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Proves that the person who signs is the one who is signed in: the password again.</summary>
public interface ISignature
{
    const string Rule = "signing-asks-for-the-password";

    /// <summary>True when the password is the actor's own; false for a wrong one, a locked account or a key.</summary>
    Task<bool> IsRightAsync(Actor actor, string password, CancellationToken cancel);
}
