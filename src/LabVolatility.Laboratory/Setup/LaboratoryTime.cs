namespace LabVolatility.Laboratory.Setup;

/// <summary>The laboratory's local time: days, shifts and years are told by it.</summary>
public sealed class LaboratoryTime(TimeZoneInfo zone)
{
    public TimeZoneInfo Zone { get; } = zone;

    public static LaboratoryTime Of(LaboratorySettings settings) => new(TimeZoneInfo.FindSystemTimeZoneById(settings.TimeZone));

    /// <summary>The instant with the laboratory's offset.</summary>
    public DateTimeOffset Local(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, Zone);

    /// <summary>The local day of an instant.</summary>
    public DateOnly Day(DateTimeOffset instant) => DateOnly.FromDateTime(Local(instant).DateTime);

    /// <summary>The instant of a local clock reading; the earlier one where the clock is set back, null where it is skipped.</summary>
    public DateTimeOffset? Instant(DateTime local)
    {
        var clock = DateTime.SpecifyKind(local, DateTimeKind.Unspecified);
        if (Zone.IsInvalidTime(clock))
            return null;
        var offset = Zone.IsAmbiguousTime(clock) ? Zone.GetAmbiguousTimeOffsets(clock).Max() : Zone.GetUtcOffset(clock);
        return new DateTimeOffset(clock, offset);
    }
}
