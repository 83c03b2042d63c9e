using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace LabVolatility.Web.Layout;

/// <summary>A text inside a drawing; in Razor markup "text" means something else.</summary>
public sealed class SvgText : ComponentBase
{
    [Parameter, EditorRequired]
    public string X { get; set; } = "0";

    [Parameter, EditorRequired]
    public string Y { get; set; } = "0";

    [Parameter, EditorRequired]
    public string Words { get; set; } = "";

    [Parameter]
    public string Anchor { get; set; } = "middle";

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", X);
        builder.AddAttribute(2, "y", Y);
        builder.AddAttribute(3, "text-anchor", Anchor);
        builder.AddContent(4, Words);
        builder.CloseElement();
    }
}
