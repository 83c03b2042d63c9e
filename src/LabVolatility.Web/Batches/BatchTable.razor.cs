using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>Batches as lines, with outcome and decision in force.</summary>
public sealed partial class BatchTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ListedBatch> Lines { get; set; } = [];

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
