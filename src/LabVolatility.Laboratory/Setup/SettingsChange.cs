namespace LabVolatility.Laboratory.Setup;

/// <summary>The settings as an administrator sends them.</summary>
/// <param name="Version">The version that was on screen; another one in force is a conflict.</param>
public sealed record SettingsChange(
    string Name, string? Place, string TimeZone, IReadOnlyList<TimeOnly> ShiftStarts, int RetainDays,
    string? PublicAddress, string? EmergencyNumbers, Guid Version);
