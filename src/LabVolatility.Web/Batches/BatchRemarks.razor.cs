using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>How the levels agree, days and places without a limit, edges that clash.</summary>
public sealed partial class BatchRemarks : ComponentBase
{
    [Parameter, EditorRequired]
    public Evidence Evidence { get; set; } = null!;
}
