using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Setup;

/// <summary>What the laboratory is called and by which clock it lives; a single row with id 1.</summary>
public sealed class LaboratorySettings : IRecorded
{
    public const int OnlyId = 1;

    public int Id { get; init; } = OnlyId;
    public required string Name { get; set; }
    public string? Place { get; set; }

    /// <summary>IANA name, such as "Europe/Oslo".</summary>
    public required string TimeZone { get; set; }

    /// <summary>Local starting times of the shifts, in order.</summary>
    public IReadOnlyList<TimeOnly> ShiftStarts { get; set; } = [new(6, 0), new(14, 0), new(22, 0)];

    /// <summary>Days that the retained portion is kept after testing; 30 by 40 CFR 1090.1345.</summary>
    public int RetainDays { get; set; } = 30;

    /// <summary>Where recipients check a certificate, scheme and host; empty prints the path alone.</summary>
    public string? PublicAddress { get; set; }

    /// <summary>Whom to call on site, a line each; shown on the emergency page. Null: not entered yet.</summary>
    public string? EmergencyNumbers { get; set; }

    public bool IsDemo { get; init; }
    public Guid Version { get; set; }
}
