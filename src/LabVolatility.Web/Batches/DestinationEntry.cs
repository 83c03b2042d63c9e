using LabVolatility.Core.Limits;

namespace LabVolatility.Web.Batches;

/// <summary>A destination as picked in the form.</summary>
public sealed class DestinationEntry
{
    public string? Area { get; set; }

    public PointOfCompliance Point { get; set; }
}
