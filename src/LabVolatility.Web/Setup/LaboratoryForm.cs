using System.Globalization;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Setup;

/// <summary>The settings as typed.</summary>
internal sealed class LaboratoryForm
{
    public string? Name { get; set; }

    public string? Place { get; set; }

    public string? TimeZone { get; set; }

    public string? ShiftStarts { get; set; }

    public string? RetainDays { get; set; }

    public string? PublicAddress { get; set; }

    public string? EmergencyNumbers { get; set; }

    public Guid Version { get; set; }

    public static LaboratoryForm Of(LaboratorySettings settings) => new()
    {
        Name = settings.Name,
        Place = settings.Place,
        TimeZone = settings.TimeZone,
        ShiftStarts = string.Join(", ", settings.ShiftStarts.Select(t => t.ToString("HH:mm", CultureInfo.InvariantCulture))),
        RetainDays = settings.RetainDays.ToString(CultureInfo.InvariantCulture),
        PublicAddress = settings.PublicAddress,
        EmergencyNumbers = settings.EmergencyNumbers,
        Version = settings.Version,
    };

    /// <summary>The change to ask for, or what can't be read of it.</summary>
    public SettingsChange? Read(out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        var shifts = new List<TimeOnly>();
        foreach (var text in (ShiftStarts ?? "").Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            if (TimeOnly.TryParseExact(text, ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var start))
                shifts.Add(start);
            else
                found.Add(new Problem("/shiftStarts", $"\"{text}\" is no time of day. Give times as 06:00, 14:00, 22:00."));
        }

        if (!int.TryParse(RetainDays?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var days))
            found.Add(new Problem("/retainDays", "Give a whole number of days, for example 30."));
        problems = found;
        return found.Count > 0
            ? null
            : new SettingsChange(Name ?? "", Place, (TimeZone ?? "").Trim(), shifts, days, PublicAddress, EmergencyNumbers, Version);
    }
}
