using LabVolatility.Laboratory.Today;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>How near the last batches were to their limits, the latest first.</summary>
public sealed partial class MarginList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<BatchMargin> Margins { get; set; } = [];
}
