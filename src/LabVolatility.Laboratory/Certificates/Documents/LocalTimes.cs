using System.Globalization;

namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Writes instants as the laboratory's clock showed them.</summary>
internal sealed class LocalTimes(string timeZone)
{
    private const string Minutes = "yyyy-MM-dd HH:mm";

    private readonly TimeZoneInfo _zone = TimeZoneInfo.FindSystemTimeZoneById(timeZone);

    public string ZoneName { get; } = timeZone;

    /// <summary>"2026-11-25 14:05"; in the hour that comes twice in autumn with its offset.</summary>
    public string At(DateTimeOffset instant)
    {
        var local = TimeZoneInfo.ConvertTime(instant, _zone);
        return local.ToString(_zone.IsAmbiguousTime(local) ? Minutes + " zzz" : Minutes, CultureInfo.InvariantCulture);
    }

    /// <summary>"2026-11-25 14:05 +01:00 (Europe/Prague)".</summary>
    public string AtWithZone(DateTimeOffset instant)
    {
        var local = TimeZoneInfo.ConvertTime(instant, _zone);
        return local.ToString(Minutes + " zzz", CultureInfo.InvariantCulture) + $" ({ZoneName})";
    }

    public static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
