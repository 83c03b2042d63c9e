using LabVolatility.Laboratory.Certificates;

namespace LabVolatility.Web.Certificates;

/// <summary>A shore tank as picked, with what its batch says.</summary>
public sealed class CargoTankEntry
{
    public string? Tank { get; set; }

    public string? Batch { get; set; }

    /// <summary>The batch as a certificate would state it now; null before one is picked.</summary>
    public CargoBatch? Seen { get; set; }
}
