using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>An empty page that teaches: what will be here, and what to do first.</summary>
public sealed partial class EmptyHint : ComponentBase
{
    /// <summary>"No samples yet".</summary>
    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    /// <summary>What will be here.</summary>
    [Parameter, EditorRequired]
    public string What { get; set; } = "";

    /// <summary>What to do first.</summary>
    [Parameter]
    public string? First { get; set; }

    /// <summary>The act or link that starts it.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }
}
