using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Setup;

internal static class SettingsRules
{
    private const int MostRetainDays = 3650;
    private const int LongestNumbers = 1000;

    public static IReadOnlyList<Problem> Problems(SettingsChange change)
    {
        var problems = new List<Problem>();
        if (string.IsNullOrWhiteSpace(change.Name) || change.Name.Trim().Length > 100)
            problems.Add(new Problem("/name", "The laboratory's name has 1 to 100 characters: it stands on every certificate."));
        if (change.Place?.Length > 100)
            problems.Add(new Problem("/place", "The place has at most 100 characters."));
        if (!IsZone(change.TimeZone))
            problems.Add(new Problem("/timeZone", $"\"{change.TimeZone}\" is no time zone. Give its IANA name, for example \"Europe/Oslo\" or \"America/Chicago\"."));
        if (change.ShiftStarts.Count is < 1 or > 6 || change.ShiftStarts.Distinct().Count() != change.ShiftStarts.Count)
            problems.Add(new Problem("/shiftStarts", "Give one to six different starting times, for example 06:00, 14:00, 22:00."));
        if (change.RetainDays is < 1 or > MostRetainDays)
            problems.Add(new Problem("/retainDays", $"The retained portion is kept for 1 to {MostRetainDays} days; 40 CFR 1090.1345 asks for 30."));
        if (!IsAddress(change.PublicAddress))
            problems.Add(new Problem("/publicAddress", "Give the address that recipients reach, beginning with https, or leave it empty."));
        if (change.EmergencyNumbers?.Length > LongestNumbers)
            problems.Add(new Problem("/emergencyNumbers", $"The site's numbers have at most {LongestNumbers} characters."));
        return problems;
    }

    private static bool IsZone(string? name) =>
        !string.IsNullOrWhiteSpace(name) && name.Contains('/', StringComparison.Ordinal) && TimeZoneInfo.TryFindSystemTimeZoneById(name, out _);

    private static bool IsAddress(string? address) =>
        string.IsNullOrWhiteSpace(address)
        || (Uri.TryCreate(address.Trim(), UriKind.Absolute, out var uri) && uri.Scheme == Uri.UriSchemeHttps && uri.Query.Length == 0 && uri.Fragment.Length == 0);
}
