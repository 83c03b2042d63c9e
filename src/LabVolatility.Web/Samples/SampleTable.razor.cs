using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Samples, a line each.</summary>
public sealed partial class SampleTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ListedSample> Lines { get; set; } = [];

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
