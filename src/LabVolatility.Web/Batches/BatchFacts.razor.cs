using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>Where the batch may go, when it is used, by which rule it is judged.</summary>
public sealed partial class BatchFacts : ComponentBase
{
    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
