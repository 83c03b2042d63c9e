using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Where a sample comes from.</summary>
public sealed partial class SampleFacts : ComponentBase
{
    [Parameter, EditorRequired]
    public SampleSheet Sheet { get; set; } = null!;
}
