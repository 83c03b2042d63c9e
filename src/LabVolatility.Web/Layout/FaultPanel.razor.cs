using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>What a person sees of a fault: words and a reference, never its inside.</summary>
public sealed partial class FaultPanel : ComponentBase
{
    [Parameter, EditorRequired]
    public string Reference { get; set; } = "";
}
