using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The batch's samples by level, each with its determinations.</summary>
public sealed partial class SampleResults : ComponentBase
{
    [Parameter, EditorRequired]
    public Evidence Evidence { get; set; } = null!;
}
