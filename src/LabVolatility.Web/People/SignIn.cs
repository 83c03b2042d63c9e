using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;

namespace LabVolatility.Web.People;

/// <summary>Lets a person in by name and password; says the same, as slowly, whether the name or the password was wrong.</summary>
public sealed class SignIn(UserManager<Person> users, IPasswordHasher<Person> hasher, TryLimits limits, TimeProvider clock, ILogger<SignIn> log)
{
    private const string Wrong = "The name and the password do not go together, or the account is closed or locked for some minutes after five wrong tries.";

    private static readonly Person Nobody = new() { FullName = "nobody" };
    private static string? _nobodysHash;

    /// <returns>What stands against it, or null once the cookie is written.</returns>
    public async Task<string?> RunAsync(HttpContext http, string? userName, string? password)
    {
        if (string.IsNullOrWhiteSpace(userName) || string.IsNullOrEmpty(password) || userName.Length > 100 || password.Length > PasswordRules.Longest)
            return "Enter your sign-in name and your password.";
        if (!limits.MaySignIn(userName.Trim()))
            return "Too many tries with this name: wait a minute.";

        var person = await users.FindByNameAsync(userName.Trim());
        if (person is null || person.IsService)
        {
            _nobodysHash ??= hasher.HashPassword(Nobody, OneTimePassword.Make());
            hasher.VerifyHashedPassword(Nobody, _nobodysHash, password);
            log.LogWarning("Sign-in refused: no such account");
            return Wrong;
        }

        var right = await users.CheckPasswordAsync(person, password);
        if (!person.Active || await users.IsLockedOutAsync(person))
        {
            log.LogWarning("Sign-in refused: account {PersonId} is closed or locked", person.Id);
            return Wrong;
        }

        if (!right)
        {
            await users.AccessFailedAsync(person);
            log.LogWarning("Sign-in refused: wrong password for account {PersonId}", person.Id);
            return Wrong;
        }

        await users.ResetAccessFailedCountAsync(person);
        await OpenAsync(http, person);
        log.LogInformation("Signed in: account {PersonId}, by password", person.Id);
        return null;
    }

    /// <summary>Writes a new cookie, for a person whose secret has just been checked.</summary>
    public Task OpenAsync(HttpContext http, Person person) =>
        http.SignInAsync(IdentityConstants.ApplicationScheme, PersonClaims.Make(person, clock.GetUtcNow()), new AuthenticationProperties { IsPersistent = false });

    /// <summary>Whether this is the person's password; wrong ones count towards the lock.</summary>
    public async Task<bool> IsPasswordAsync(Guid personId, string? password)
    {
        var person = await users.FindByIdAsync(personId.ToString());
        if (person is not { Active: true, IsService: false } || string.IsNullOrEmpty(password) || await users.IsLockedOutAsync(person))
            return false;
        if (await users.CheckPasswordAsync(person, password))
        {
            await users.ResetAccessFailedCountAsync(person);
            return true;
        }

        await users.AccessFailedAsync(person);
        return false;
    }
}
