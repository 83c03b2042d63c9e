using System.Globalization;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Instants as both engines can keep them: UTC, whole microseconds.</summary>
internal static class Instant
{
    public static DateTimeOffset Cut(DateTimeOffset value)
    {
        var utc = value.ToUniversalTime();
        return utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMicrosecond));
    }

    public static long ToMicroseconds(DateTimeOffset value) =>
        (value.UtcTicks - DateTimeOffset.UnixEpoch.Ticks) / TimeSpan.TicksPerMicrosecond;

    public static DateTimeOffset FromMicroseconds(long value) =>
        DateTimeOffset.UnixEpoch.AddTicks(value * TimeSpan.TicksPerMicrosecond);

    public static string Text(DateTimeOffset value) =>
        Cut(value).ToString("yyyy-MM-dd'T'HH:mm:ss.ffffff'Z'", CultureInfo.InvariantCulture);
}
