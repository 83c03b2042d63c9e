using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>The act on a draft: approve it, or who does.</summary>
public sealed partial class ApproveAct : ComponentBase
{
    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Parameter, EditorRequired]
    public Guid DraftedBy { get; set; }

    /// <summary>What is approved, for a screen reader.</summary>
    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    [Parameter]
    public EventCallback Wanted { get; set; }

    private bool MayApprove => Actor.May(Right.ManageReferenceData);
}
