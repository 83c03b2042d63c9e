using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>Makes a key of the machine interface.</summary>
public sealed class MakeKey(Func<LabContext> open, TimeProvider clock)
{
    private const int MostDays = 730;
    private const KeyScopes AllScopes = KeyScopes.Calculate | KeyScopes.Read | KeyScopes.Write | KeyScopes.Import;

    public async Task<Answer<KeyMade>> Run(Actor actor, NewKey wanted, CancellationToken cancellationToken = default)
    {
        if (actor.Lacks(Right.Administer, "Making a key") is { } lacking)
            return Answer<KeyMade>.Forbidden(lacking);

        await using var lab = open();
        var problems = Problems(wanted);
        if (!await lab.People.AnyAsync(p => p.Id == wanted.OwnerId && p.Active, cancellationToken))
            problems.Add(new Problem("/owner", "A key belongs to an account in use: choose who answers for it."));
        if (problems.Count > 0)
            return Answer<KeyMade>.Invalid(problems);

        lab.Act = actor.Does("make key");
        var now = clock.GetUtcNow();
        var secret = KeySecret.Make();
        var key = new InterfaceKey
        {
            Id = Guid.CreateVersion7(now),
            Name = wanted.Name.Trim(),
            OwnerId = wanted.OwnerId,
            Scopes = wanted.Scopes,
            Prefix = secret[..KeySecret.PrefixLength],
            Hash = KeySecret.Hash(secret),
            CreatedAt = now,
            ExpiresAt = now.AddDays(wanted.Days),
        };
        lab.Keys.Add(key);
        await lab.SaveChangesAsync(cancellationToken);
        return Answer<KeyMade>.Done(new KeyMade(key.Id, key.Name, secret, key.ExpiresAt));
    }

    private static List<Problem> Problems(NewKey wanted)
    {
        var problems = new List<Problem>();
        if (string.IsNullOrWhiteSpace(wanted.Name) || wanted.Name.Trim().Length > 100)
            problems.Add(new Problem("/name", "Say in 1 to 100 characters what the key is for."));
        if (wanted.Scopes == KeyScopes.None || (wanted.Scopes & ~AllScopes) != 0)
            problems.Add(new Problem("/scopes", "Choose at least one scope."));
        if (wanted.Days is < 1 or > MostDays)
            problems.Add(new Problem("/days", $"A key lasts 1 to {MostDays} days."));
        return problems;
    }
}
