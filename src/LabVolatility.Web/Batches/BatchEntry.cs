using System.Globalization;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;

namespace LabVolatility.Web.Batches;

/// <summary>A batch as typed: every field keeps its text.</summary>
public sealed class BatchEntry
{
    /// <summary>The command's id: made once per form, so that a second click registers nothing twice.</summary>
    public Guid CommandId { get; } = Guid.NewGuid();

    public string? Number { get; set; }

    public string? Grade { get; set; }

    public string? Tank { get; set; }

    public string? Volume { get; set; }

    public string? Ethanol { get; set; }

    public string? EthanolMethod { get; set; }

    public string? From { get; set; }

    public string? Until { get; set; }

    public string? NeededBy { get; set; }

    public string? Note { get; set; }

    public List<DestinationEntry> Destinations { get; } = [];

    public static BatchEntry Of(Batch batch, LabClock clock)
    {
        var entry = new BatchEntry
        {
            Number = batch.Number,
            Grade = batch.GradeCode,
            Tank = batch.TankCode,
            Volume = Plain(batch.CubicMetres),
            Ethanol = Plain(batch.EthanolPercent),
            EthanolMethod = batch.EthanolMethod,
            From = BatchWords.Of(batch.From),
            Until = BatchWords.Of(batch.Until),
            NeededBy = batch.NeededBy is { } needed ? clock.Text(needed) : null,
            Note = batch.Note,
        };
        entry.Destinations.AddRange(batch.Destinations.Select(d => new DestinationEntry { Area = d.Area, Point = d.Point }));
        return entry;
    }

    /// <summary>What was typed as a request, and what could not be read.</summary>
    public (BatchRequest Request, IReadOnlyList<Problem> Problems) Read(LabClock clock)
    {
        Tidy();
        var problems = new List<Problem>();
        var request = new BatchRequest
        {
            CommandId = CommandId,
            Number = Number?.Trim(),
            Grade = Blank(Grade),
            Tank = Blank(Tank),
            CubicMetres = NumberOf(Volume, 1_000_000m, "/volume", problems),
            EthanolPercent = NumberOf(Ethanol, 100m, "/ethanolPercent", problems),
            EthanolMethod = Blank(EthanolMethod),
            Destinations = [.. Destinations.Where(d => !string.IsNullOrEmpty(d.Area)).Select(d => new Destination(d.Area!, d.Point))],
            From = DayOf(From, "/from", problems),
            Until = DayOf(Until, "/until", problems),
            NeededBy = InstantOf(NeededBy, clock, problems),
            Note = Blank(Note),
        };
        return (request, problems);
    }

    // Empty and repeated lines go from the form, too: problems name a destination by its place.
    private void Tidy()
    {
        var kept = Destinations.Where(d => !string.IsNullOrEmpty(d.Area)).DistinctBy(d => (d.Area, d.Point)).ToList();
        Destinations.Clear();
        Destinations.AddRange(kept);
        if (kept.Count == 0)
            Destinations.Add(new DestinationEntry());
    }

    private static decimal? NumberOf(string? text, decimal high, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (QuantityText.TryReadNumber(text, 0m, high, out var value, out var problem))
            return value;
        problems.Add(new Problem(field, problem ?? "This is no number."));
        return null;
    }

    private static DateOnly? DayOf(string? text, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        problems.Add(new Problem(field, $"\"{text.Trim()}\" is no day. Give it as 2026-11-25."));
        return null;
    }

    private static DateTimeOffset? InstantOf(string? text, LabClock clock, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (clock.TryRead(text, out var at, out var problem))
            return at;
        problems.Add(new Problem("/neededBy", problem!));
        return null;
    }

    private static string? Plain(decimal? value) => value is { } number ? Rounding.Plain(number) : null;

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
