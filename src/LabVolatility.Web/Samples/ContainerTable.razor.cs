using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>The containers, their openings, and the one that is kept.</summary>
public sealed partial class ContainerTable : ComponentBase
{
    [Parameter, EditorRequired]
    public SampleSheet Sheet { get; set; } = null!;
}
