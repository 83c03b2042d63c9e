using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Laboratory.Demo;

/// <summary>The demo's days, counted back from the moment of the first start.</summary>
/// <param name="now">The moment of the first start.</param>
/// <param name="time">The laboratory's time.</param>
/// <param name="count">How many days of past there are.</param>
internal sealed class DemoDays(DateTimeOffset now, LaboratoryTime time, int count)
{
    /// <summary>Eighteen months and what is missing to see two summers and two winters, whatever the day of the first start.</summary>
    public const int Whole = 600;

    public DateTimeOffset Now { get; } = now;

    public int Count { get; } = count;

    /// <summary>The local day of the first start.</summary>
    public DateOnly Today { get; } = time.Day(now);

    /// <summary>Day 0 is the first one, the last one is yesterday.</summary>
    public DateOnly Day(int number) => Today.AddDays(number - Count);

    /// <summary>How many days before the first start a day was: 1 for yesterday.</summary>
    public int Back(int day) => Count - day;

    /// <summary>The local day of a moment.</summary>
    public DateOnly Of(DateTimeOffset at) => time.Day(at);

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
