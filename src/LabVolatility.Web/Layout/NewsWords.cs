using System.Globalization;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Layout;

/// <summary>What others changed, in a sentence: "14:02:11 Kola Adeyemi released batch 26-1042".</summary>
public static class NewsWords
{
    private const string Vowels = "aeiou";

    private static readonly Dictionary<string, string> Past = new(StringComparer.Ordinal)
    {
        ["cancel"] = "cancelled", ["give"] = "gave", ["hold"] = "held", ["make"] = "made", ["put"] = "put", ["set"] = "set",
        ["take"] = "took", ["withdraw"] = "withdrew", ["write"] = "wrote",
    };

    /// <summary>The last change in full and how many came before it; null where there is none.</summary>
    public static string? Of(IEnumerable<Notice> notices, LabClock clock, bool asItWas)
    {
        var latest = notices.OrderByDescending(n => n.At).ToList();
        if (latest.Count == 0)
            return null;
        var before = latest.Count switch { 1 => "", 2 => ", after 1 other change", var all => $", after {all - 1} other changes" };
        var rest = asItWas ? ". This page stays as it was: open it again to see the change" : "";
        return $"{clock.Local(latest[0].At).ToString("HH:mm:ss", CultureInfo.InvariantCulture)} {Of(latest[0])}{before}{rest}.";
    }

    /// <summary>Who did what to what.</summary>
    public static string Of(Notice notice)
    {
        if (notice.Who is null)
            return "the connection to the database was cut for a moment: this page was read again";
        var words = notice.Act.Split(' ');
        var act = string.Join(' ', words.Skip(1).Prepend(PastOf(words[0])));
        return (notice.Who, Subject(notice)) switch
        {
            (var who, null) => $"{who} {act}",
            (var who, { } thing) when words.Length == 1 => $"{who} {act} {thing.Kind} {thing.Name}",
            (var who, { } thing) when notice.Act.EndsWith(thing.Kind, StringComparison.Ordinal) => $"{who} {act} {thing.Name}",
            (var who, { } thing) => $"{who} {act}, {thing.Kind} {thing.Name}",
        };
    }

    // What the act itself names, where it has a name; else the sample, instrument or tank it was done to; a decision's batch.
    private static NamedThing? Subject(Notice notice)
    {
        var words = notice.Act.Split(' ');
        var named = notice.Changed.Where(t => t.Kind.Split(' ').Any(words.Contains)).ToList();
        return named.Find(t => t.Name is not null)
            ?? First<Sample>(notice)
            ?? (notice.Changes<Verification>() ? First<Instrument>(notice) : null)
            ?? (notice.Changes<TankMovement>() ? First<Tank>(notice) : null)
            ?? (notice.Changes<Decision>() ? First<Batch>(notice) : null);
    }

    private static NamedThing? First<T>(Notice notice) where T : IRecorded =>
        notice.BelongsTo.FirstOrDefault(t => t.Name is not null && Notice.Is<T>(t));

    private static string PastOf(string verb) =>
        Past.TryGetValue(verb, out var irregular) ? irregular
        : verb.EndsWith('e') ? verb + "d"
        : verb.EndsWith('y') && !Vowels.Contains(verb[^2], StringComparison.Ordinal) ? verb[..^1] + "ied"
        : verb + "ed";
}
