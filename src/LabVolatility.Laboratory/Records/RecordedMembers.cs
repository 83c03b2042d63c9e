using System.Collections.Concurrent;
using System.Reflection;
using System.Text;
using System.Text.Json;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;

namespace LabVolatility.Laboratory.Records;

/// <summary>Which members of a thing go into its record, and the canonical text of one state of it.</summary>
internal sealed class RecordedMembers
{
    private static readonly ConcurrentDictionary<IEntityType, RecordedMembers> Known = new();

    // Secrets, stamps and counters of sign-in: they say nothing about the work.
    private static readonly HashSet<string> SignIn =
    [
        nameof(IdentityUser.PasswordHash), nameof(IdentityUser.SecurityStamp), nameof(IdentityUser.ConcurrencyStamp),
        nameof(IdentityUser.AccessFailedCount), nameof(IdentityUser.LockoutEnd), nameof(IdentityUser.LockoutEnabled),
    ];

    private RecordedMembers(IEntityType entity)
    {
        Subject = SubjectOf(entity);
        Key = entity.FindPrimaryKey()?.Properties ?? throw new InvalidOperationException($"{entity.Name} has no key.");
        Members = [.. entity.GetProperties().Where(IsRecorded)
            .Select(p => new RecordedMember(p, JsonNamingPolicy.CamelCase.ConvertName(p.Name), KindOf(p)))
            .OrderBy(m => m.Name, StringComparer.Ordinal)];
    }

    /// <summary>What it is called in the record: "determination revision".</summary>
    public string Subject { get; }

    public IReadOnlyList<IProperty> Key { get; }

    public IReadOnlyList<RecordedMember> Members { get; }

    public static RecordedMembers Of(IEntityType entity) => Known.GetOrAdd(entity, e => new RecordedMembers(e));

    public static string SubjectOf(IReadOnlyEntityType entity) => SubjectOf(entity.ClrType);

    public static string SubjectOf(Type recorded) => SnakeCase.Of(recorded.Name).Replace('_', ' ');

    /// <summary>The key as it stands in the record: a code as it is, an id in lower case with hyphens.</summary>
    public string IdOf(Func<IProperty, object?> value) =>
        string.Join('/', Key.Select(p => CanonicalText.Of(new RecordedMember(p, p.Name, KindOf(p)), value(p)).Trim('"')));

    /// <summary>The canonical text of one state, from its values.</summary>
    public string Text(Func<IProperty, object?> value) => TextOf(m => CanonicalText.Of(m, value(m.Property)));

    /// <summary>The canonical text of one state, from members that are canonical text already.</summary>
    /// <remarks>What is null is left out: a column that a later version adds changes no text of an earlier record.</remarks>
    public string TextOf(Func<RecordedMember, string> canonical)
    {
        var text = new StringBuilder("{");
        foreach (var member in Members)
        {
            var value = canonical(member);
            if (value != CanonicalText.Null)
                CanonicalText.AppendMember(text, member.Name, value);
        }

        return text.Append('}').ToString();
    }

    /// <summary>An entry's state before and after; the state before is asked of the database where the entry can't tell.</summary>
    public async Task<(string? Before, string? After)> TextsAsync(EntityEntry entry, CancellationToken cancellationToken)
    {
        string? after = entry.State is EntityState.Deleted ? null : Text(p => entry.Property(p.Name).CurrentValue);
        if (entry.State is EntityState.Added)
            return (null, after);
        var before = Text(p => entry.Property(p.Name).OriginalValue);
        if (before != after)
            return (before, after);

        // Marked as modified as a whole, perhaps without ever having been read: only the database knows what was there.
        var stored = await entry.GetDatabaseValuesAsync(cancellationToken);
        return (stored is null ? before : Text(p => stored[p]), after);
    }

    public static MemberKind KindOf(IProperty property)
    {
        var type = Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType;
        if (property.FindAnnotation(JsonColumn.Annotation) is not null)
            return MemberKind.Json;
        if (type.IsEnum || type == typeof(string))
            return MemberKind.Text;
        if (type == typeof(int) || type == typeof(long))
            return MemberKind.Integer;
        if (type == typeof(decimal))
            return MemberKind.Decimal;
        if (type == typeof(bool))
            return MemberKind.Boolean;
        if (type == typeof(DateTimeOffset))
            return MemberKind.Instant;
        if (type == typeof(DateOnly))
            return MemberKind.Date;
        if (type == typeof(Guid))
            return MemberKind.Identifier;
        return type == typeof(byte[])
            ? MemberKind.Bytes
            : throw new InvalidOperationException($"Records have no text for {property.DeclaringType.Name}.{property.Name}.");
    }

    private static bool IsRecorded(IProperty property) =>
        property.Name != PendingChanges.VersionName
        && property.PropertyInfo?.GetCustomAttribute<NotRecordedAttribute>() is null
        && !(property.DeclaringType.ClrType.IsAssignableTo(typeof(IdentityUser<Guid>)) && SignIn.Contains(property.Name));
}
