namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>What stands on the label of one container.</summary>
public sealed record LabelContent
{
    public const string GasolineHazard =
        "DANGER: extremely flammable liquid and vapour.\nKeep cool and upright. Fill 70–80 %.";

    public required string LaboratoryName { get; init; }

    /// <summary>The code of <c>ScanCode.ForContainer</c>.</summary>
    public required string ContainerCode { get; init; }

    public required string SampleNumber { get; init; }

    public required string Grade { get; init; }

    public string? Tank { get; init; }

    public string? SamplePoint { get; init; }

    public required string Level { get; init; }

    public required DateTimeOffset SampledAt { get; init; }

    /// <summary>A name of the time zone database, or "UTC".</summary>
    public required string TimeZone { get; init; }

    public required int ContainerNumber { get; init; }

    public required int ContainerCount { get; init; }

    /// <summary>At most two lines of the label; it is never shortened.</summary>
    public string Hazard { get; init; } = GasolineHazard;
}
