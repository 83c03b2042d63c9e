namespace LabVolatility.Web.People;

/// <summary>Checks the password by which a person signs: five wrong tries a minute, which count towards the lock.</summary>
public sealed class SignaturePassword(IServiceScopeFactory scopes, TryLimits limits, ILogger<SignaturePassword> log)
{
    /// <returns>What stands against the signature, or null when the password is right.</returns>
    public async Task<string?> ProblemAsync(Guid personId, string? password)
    {
        if (string.IsNullOrEmpty(password))
            return "Enter your password: it is your signature.";
        if (!limits.MaySign(personId))
            return "Too many tries: wait a minute, then sign again. Nothing was signed.";

        // A scope of its own: a page lives long, and a context must not.
        await using var scope = scopes.CreateAsyncScope();
        if (await scope.ServiceProvider.GetRequiredService<SignIn>().IsPasswordAsync(personId, password))
            return null;
        limits.CountWrongSignature(personId);
        log.LogWarning("Signature refused: wrong password for account {PersonId}", personId);
        return "This is not your password, or the account is locked for some minutes after five wrong tries. Nothing was signed.";
    }
}
