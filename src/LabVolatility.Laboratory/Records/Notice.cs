using System.Text.Json;

namespace LabVolatility.Laboratory.Records;

/// <summary>What one committed transaction changed, for whoever shows it: names and keys, no content.</summary>
public sealed record Notice
{
    /// <summary>PostgreSQL carries less than 8,000 bytes.</summary>
    private const int LongestBytes = 7_900;

    public DateTimeOffset At { get; init; }

    public Guid? PersonId { get; init; }

    /// <summary>Who did it, by name; null where nobody can be named.</summary>
    public string? Who { get; init; }

    /// <summary>The act as the record has it: "report determination".</summary>
    public string Act { get; init; } = "";

    /// <summary>What was added, changed or deleted.</summary>
    public IReadOnlyList<NamedThing> Changed { get; init; } = [];

    /// <summary>What the changed things belong to: the sample and the batch of a determination.</summary>
    public IReadOnlyList<NamedThing> BelongsTo { get; init; } = [];

    /// <summary>True where too much was changed to be listed, or something may have been missed: everything may be concerned.</summary>
    public bool Much { get; init; }

    /// <summary>What stands where nobody could listen for a while.</summary>
    public static Notice Missed(DateTimeOffset at) => new() { At = at, Much = true };

    /// <summary>True where a thing of this kind was itself changed.</summary>
    public bool Changes<T>() where T : IRecorded => Much || Changed.Any(Is<T>);

    /// <summary>True for a thing of this kind.</summary>
    public static bool Is<T>(NamedThing thing) where T : IRecorded => thing.Kind == RecordedMembers.SubjectOf(typeof(T));

    /// <summary>True where this thing was changed, or something that belongs to it.</summary>
    public bool IsAbout<T>(Guid? id) where T : IRecorded => IsAbout<T>(id?.ToString("D"));

    /// <summary>True where this thing was changed, or something that belongs to it.</summary>
    public bool IsAbout<T>(string? key) where T : IRecorded =>
        Much || (key is not null && Changed.Concat(BelongsTo).Any(t => t.Key == key && Is<T>(t)));

    /// <summary>One notice for all that a transaction saved; null where it saved nothing that is recorded.</summary>
    internal static Notice? Of(IReadOnlyList<(Act Act, DateTimeOffset At, Change Change)> saved)
    {
        if (saved.Count == 0)
            return null;
        var changed = saved.Select(s => s.Change.Itself).Distinct().ToList();
        var notice = new Notice
        {
            At = saved[0].At,
            PersonId = saved[0].Act.ActorId,
            Who = saved[0].Act.Actor,
            Act = saved[0].Act.Name,
            Changed = changed,
            BelongsTo = [.. saved.SelectMany(s => s.Change.BelongsTo).Distinct().Where(t => !changed.Any(c => c.Kind == t.Kind && c.Key == t.Key))],
        };
        return notice.Written().Length > LongestBytes ? notice with { Changed = [], BelongsTo = [], Much = true } : notice;
    }

    /// <summary>As it goes to the other nodes.</summary>
    internal byte[] Written() => JsonSerializer.SerializeToUtf8Bytes(this);

    /// <summary>Reads what another node wrote; null where that is no notice.</summary>
    internal static Notice? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<Notice>(text);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
