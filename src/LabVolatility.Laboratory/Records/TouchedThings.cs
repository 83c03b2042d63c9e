using LabVolatility.Laboratory.People;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;

namespace LabVolatility.Laboratory.Records;

/// <summary>What a notice says of one changed entry.</summary>
internal static class TouchedThings
{
    private static readonly string[] Names = ["Number", "Code"];

    public static NamedThing Itself(EntityEntry entry, RecordedMembers members) =>
        new(members.Subject, members.IdOf(p => entry.Property(p.Name).CurrentValue), NameOf(entry));

    /// <summary>The recorded things that it refers to. Who did it stands in the act: people are left out.</summary>
    public static IReadOnlyList<NamedThing> BelongsTo(EntityEntry entry) =>
        [.. entry.Metadata.GetForeignKeys()
            .Where(key => key.Properties.Count == 1 && key.PrincipalEntityType.ClrType != typeof(Person)
                && key.PrincipalEntityType.ClrType.IsAssignableTo(typeof(IRecorded)))
            .Select(key => Referred(key.PrincipalEntityType, entry.Property(key.Properties[0].Name).CurrentValue))
            .OfType<NamedThing>()];

    private static string? NameOf(EntityEntry entry) =>
        Names.Select(name => entry.Metadata.FindProperty(name))
            .Where(property => property?.ClrType == typeof(string))
            .Select(property => (string?)entry.Property(property!.Name).CurrentValue)
            .FirstOrDefault();

    private static NamedThing? Referred(IEntityType kind, object? key) => key switch
    {
        Guid id => new NamedThing(RecordedMembers.SubjectOf(kind.ClrType), id.ToString("D")),
        string code => new NamedThing(RecordedMembers.SubjectOf(kind.ClrType), code, code),
        _ => null,
    };
}
