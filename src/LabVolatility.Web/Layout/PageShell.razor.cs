using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>What every page has alike: title, reading, refused, missing, the zone's name, who printed it, the keys.</summary>
public sealed partial class PageShell : ComponentBase
{
    [Parameter, EditorRequired]
    public LabPage Page { get; set; } = null!;

    /// <summary>A line beside the title: the batch's grade and tank, its status.</summary>
    [Parameter]
    public RenderFragment? Lead { get; set; }

    /// <summary>Buttons at the right of the title.</summary>
    [Parameter]
    public RenderFragment? Acts { get; set; }

    /// <summary>Drawn once the page is ready.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [Inject]
    private LaboratoryFacts Facts { get; set; } = null!;
}
