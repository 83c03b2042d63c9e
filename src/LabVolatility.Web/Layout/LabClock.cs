using System.Globalization;
using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Layout;

/// <summary>Instants in the laboratory's own zone, as 2026-11-25 14:05.</summary>
public sealed class LabClock(LaboratoryFacts facts, TimeProvider clock)
{
    public const string Pattern = "yyyy-MM-dd HH:mm";

    private static readonly string[] Typed = [Pattern, "yyyy-MM-ddTHH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-ddTHH:mm:ss"];

    public TimeZoneInfo Zone => facts.Zone;

    public DateTimeOffset Now => TimeZoneInfo.ConvertTime(clock.GetUtcNow(), Zone);

    public DateOnly Today => DateOnly.FromDateTime(Now.DateTime);

    /// <summary>The zone as named once per page: "Europe/Oslo, UTC+01:00 now".</summary>
    public string ZoneText => $"{Zone.Id}, UTC{Offset(Now.Offset)} now";

    public DateTimeOffset Local(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, Zone);

    /// <summary>The instant on the laboratory's clock; with its offset where that hour comes twice.</summary>
    public string Text(DateTimeOffset instant)
    {
        var local = Local(instant);
        var text = local.ToString(Pattern, CultureInfo.InvariantCulture);
        return Zone.IsAmbiguousTime(local.DateTime) ? $"{text} UTC{Offset(local.Offset)}" : text;
    }

    /// <summary>The time of day alone, for today's things: "14:05".</summary>
    public string TimeText(DateTimeOffset instant) => Local(instant).ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Reads what a person typed by the laboratory's clock.</summary>
    public bool TryRead(string? text, out DateTimeOffset instant, out string? problem)
    {
        instant = default;
        problem = null;
        var typed = (text ?? "").Trim();
        if (DateTimeOffset.TryParseExact(typed, ["yyyy-MM-dd HH:mmzzz", "yyyy-MM-dd HH:mm zzz", "yyyy-MM-ddTHH:mmzzz"], CultureInfo.InvariantCulture, DateTimeStyles.None, out instant))
            return true;
        if (!DateTime.TryParseExact(typed, Typed, CultureInfo.InvariantCulture, DateTimeStyles.None, out var local))
            problem = "Give date and time as 2026-11-25 14:05.";
        else if (Zone.IsInvalidTime(local))
            problem = "The clock was put forward: this hour does not exist on that day.";
        else if (Zone.IsAmbiguousTime(local))
            problem = $"The clock was put back: this hour comes twice. Add the offset, such as {typed}{Offset(Zone.GetAmbiguousTimeOffsets(local)[0])}.";
        else
            instant = new DateTimeOffset(local, Zone.GetUtcOffset(local));
        return problem is null;
    }

    private static string Offset(TimeSpan offset) =>
        (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString(@"hh\:mm", CultureInfo.InvariantCulture);
}
