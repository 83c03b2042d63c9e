using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Setup;

/// <summary>The laboratory's settings as last read, so that a page can name the laboratory without asking the database.</summary>
/// <remarks>The site's emergency numbers are kept in a file besides: that page works without the database.</remarks>
public sealed class LaboratoryFacts(ReadSettings read, WebSettings web)
{
    private volatile LaboratorySettings? _settings;

    public string Name => _settings?.Name ?? "LabVolatility";

    public string? Place => _settings?.Place;

    public TimeZoneInfo Zone => _settings is { } known ? TimeZoneInfo.FindSystemTimeZoneById(known.TimeZone) : TimeZoneInfo.Utc;

    public string? PublicAddress => _settings?.PublicAddress;

    private string NumbersFile => Path.Combine(web.Storage.DataFolder, "emergency-numbers.txt");

    public async Task RefreshAsync(CancellationToken cancellationToken = default)
    {
        var now = await read.Run(cancellationToken);
        if (now is not null && now.EmergencyNumbers != EmergencyNumbers())
            await File.WriteAllTextAsync(NumbersFile, now.EmergencyNumbers ?? "", cancellationToken);
        _settings = now;
    }

    /// <summary>Whom to call on site, a line each; null when not entered yet.</summary>
    public string? EmergencyNumbers()
    {
        if (_settings is { } known)
            return known.EmergencyNumbers;
        var kept = File.Exists(NumbersFile) ? File.ReadAllText(NumbersFile) : "";
        return kept.Length == 0 ? null : kept;
    }
}
