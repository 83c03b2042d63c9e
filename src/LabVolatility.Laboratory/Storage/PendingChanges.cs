using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;

namespace LabVolatility.Laboratory.Storage;

/// <summary>What is about to be saved: checked, brought to what both engines keep alike, and put into words.</summary>
internal sealed class PendingChanges
{
    public const int DecimalPlaces = 10;
    public const string VersionName = "Version";

    private const decimal DecimalBound = 1_000_000_000_000_000_000m;

    private PendingChanges(IReadOnlyList<EntityEntry> recorded) => Recorded = recorded;

    /// <summary>Entries of recorded things; some may turn out to hold no recorded change.</summary>
    public IReadOnlyList<EntityEntry> Recorded { get; }

    /// <exception cref="InvalidOperationException">A reported fact would be changed, or a value can't be kept.</exception>
    public static PendingChanges Of(LabContext lab)
    {
        lab.ChangeTracker.DetectChanges();
        var changed = lab.ChangeTracker.Entries()
            .Where(e => e.State is EntityState.Added or EntityState.Modified or EntityState.Deleted).ToList();
        foreach (var entry in changed)
        {
            RefuseRewriting(entry);
            if (entry.State is not EntityState.Deleted)
                Prepare(entry);
        }

        return new PendingChanges([.. changed.Where(e => e.Entity is IRecorded)]);
    }

    /// <summary>One description for each entry with a recorded change.</summary>
    public async Task<IReadOnlyList<Change>> DescribeAsync(LabContext lab, CancellationToken cancellationToken)
    {
        var changes = new List<Change>();
        foreach (var entry in Recorded)
        {
            var members = RecordedMembers.Of(entry.Metadata);
            var (before, after) = await members.TextsAsync(entry, cancellationToken);
            if (before != after)
                changes.Add(new Change(TouchedThings.Itself(entry, members), TouchedThings.BelongsTo(entry), before, after));
        }

        if (changes.Count > 0 && lab.Act is null)
            throw new InvalidOperationException($"No write without an audit record: set Act before the {changes[0].Itself.Kind} is saved.");
        return changes;
    }

    private static void RefuseRewriting(EntityEntry entry)
    {
        if (entry.State is EntityState.Added || entry.Entity is not (IReported or AuditRecord or PerformedCommand))
            return;
        var what = entry.State is EntityState.Deleted ? "deleted" : "updated";
        throw new InvalidOperationException(
            $"A reported fact is never {what}: amend the {RecordedMembers.SubjectOf(entry.Metadata)} by adding what is true now, with the reason.");
    }

    private static void Prepare(EntityEntry entry)
    {
        foreach (var property in entry.Properties)
        {
            if (property.Metadata.Name == VersionName && property.Metadata.ClrType == typeof(Guid))
                property.CurrentValue = Guid.NewGuid();
            else if (property.CurrentValue is decimal number)
                Replace(property, number, Kept(number, property.Metadata));
            else if (property.CurrentValue is DateTimeOffset instant)
                Replace(property, instant, Instant.Cut(instant));
            else if (property.CurrentValue is string text)
                RefuseUnkept(text, property.Metadata);
        }
    }

    private static void Replace<T>(PropertyEntry property, T value, T kept)
    {
        if (!EqualityComparer<T>.Default.Equals(value, kept))
            property.CurrentValue = kept;
    }

    private static decimal Kept(decimal value, IReadOnlyProperty property)
    {
        if (Math.Abs(value) >= DecimalBound)
            throw new InvalidOperationException($"{property.Name} has more than 18 digits before the point.");
        return Rounding.ToPlaces(value, DecimalPlaces);
    }

    private static void RefuseUnkept(string text, IReadOnlyProperty property)
    {
        if (property.GetMaxLength() is { } longest && text.Length > longest)
            throw new InvalidOperationException($"{property.Name} is longer than {longest} characters.");
        if (text.Contains('\0', StringComparison.Ordinal))
            throw new InvalidOperationException($"{property.Name} holds the character NUL, which no text can hold.");
    }
}
