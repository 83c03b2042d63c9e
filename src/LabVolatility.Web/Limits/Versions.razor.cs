using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Every version of the laboratory's own: drafts, approved ones, replaced ones.</summary>
public sealed partial class Versions : ComponentBase
{
    [Parameter, EditorRequired]
    public AreaSheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Parameter]
    public EventCallback<LaboratoryArea> ApproveArea { get; set; }

    [Parameter]
    public EventCallback<LaboratoryLimit> ApproveLimit { get; set; }
}
