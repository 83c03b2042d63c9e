using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Laboratory.Today;

/// <summary>The shift that runs at a moment.</summary>
public static class Shift
{
    /// <summary>When it began, by the laboratory's clock; a day ago where no shift is set.</summary>
    public static DateTimeOffset Since(LaboratorySettings settings, DateTimeOffset now)
    {
        var time = LaboratoryTime.Of(settings);
        var today = time.Day(now);
        DateOnly[] days = [today, today.AddDays(-1)];
        var starts = days.SelectMany(day => settings.ShiftStarts.Select(start => Begin(time, day, start))).Where(at => at <= now).ToList();
        return starts.Count == 0 ? now.AddDays(-1) : starts.Max();
    }

    // Where the clock skips the hour the shift begins an hour later.
    private static DateTimeOffset Begin(LaboratoryTime time, DateOnly day, TimeOnly start)
    {
        var local = day.ToDateTime(start);
        return time.Instant(local) ?? time.Instant(local.AddHours(1)) ?? new DateTimeOffset(local, TimeSpan.Zero);
    }
}
