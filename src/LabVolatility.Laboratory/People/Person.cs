using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Identity;

namespace LabVolatility.Laboratory.People;

/// <summary>An account of the laboratory: one person, or the service account of a program.</summary>
public sealed class Person : IdentityUser<Guid>, IRecorded
{
    public required string FullName { get; set; }
    public Roles Roles { get; set; }

    /// <summary>False once the person has left; accounts are never deleted or handed on.</summary>
    public bool Active { get; set; } = true;

    /// <summary>A program's account: it owns keys, it never signs in and never signs.</summary>
    public bool IsService { get; set; }

    public DateTimeOffset CreatedAt { get; init; }
    public DateTimeOffset? PasswordSetAt { get; set; }

    /// <summary>"light", "dark" or null to follow the system; a taste, no record.</summary>
    [NotRecorded]
    public string? Theme { get; set; }
}
