namespace LabVolatility.Laboratory.People;

internal static class PersonFactory
{
    public static Person Make(NewPerson wanted, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(now),
        UserName = wanted.UserName,
        NormalizedUserName = wanted.UserName.ToUpperInvariant(),
        FullName = wanted.FullName.Trim(),
        Roles = wanted.Roles,
        IsService = wanted.IsService,
        CreatedAt = now,
        SecurityStamp = SecurityStamp.Make(),
        LockoutEnabled = true,
    };
}
