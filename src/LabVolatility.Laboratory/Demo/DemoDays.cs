using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The demo's sixty days, counted back from the moment of the first start.</summary>
internal sealed class DemoDays(DateTimeOffset now, LaboratoryTime time)
{
    public const int Count = 60;

    public DateTimeOffset Now { get; } = now;

    /// <summary>The local day of the first start.</summary>
    public DateOnly Today { get; } = time.Day(now);

    /// <summary>Day 0 is sixty days back, day 59 is yesterday.</summary>
    public DateOnly Day(int number) => Today.AddDays(number - Count);

    /// <summary>A local clock reading of a day; the next hour where the clock skips it.</summary>
    public DateTimeOffset At(int day, int hour, int minute = 0) => Instant(Day(day), hour, minute);

    /// <summary>When the local day of the first start began.</summary>
    public DateTimeOffset TodayBegan => Instant(Today, 0, 0);

    public DateTimeOffset Ago(int minutes) => Now.AddMinutes(-minutes);

    private DateTimeOffset Instant(DateOnly day, int hour, int minute)
    {
        var local = day.ToDateTime(new TimeOnly(hour, minute));
        return time.Instant(local) ?? time.Instant(local.AddHours(1))
            ?? throw new InvalidOperationException($"{local:yyyy-MM-dd HH:mm} is no time of the demo's zone.");
    }
}
