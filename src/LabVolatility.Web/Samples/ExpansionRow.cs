using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Samples;

/// <summary>One expansion's two boxes while a determination is amended.</summary>
internal sealed class ExpansionRow
{
    public string? Volume { get; set; }

    public string? Pressure { get; set; }

    public ExpansionEntry Entry => new(Volume, Pressure);
}
