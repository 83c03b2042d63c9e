using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>A secret that is shown once.</summary>
public sealed partial class OneTimeSecret : ComponentBase
{
    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    [Parameter, EditorRequired]
    public string What { get; set; } = "";

    [Parameter, EditorRequired]
    public string? Secret { get; set; }

    [Parameter]
    public EventCallback Done { get; set; }
}
