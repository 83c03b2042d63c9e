using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Draft, approved by whom and when, or out of force since when.</summary>
public sealed partial class VersionMark : ComponentBase
{
    [Parameter, EditorRequired]
    public DateTimeOffset? ApprovedAt { get; set; }

    [Parameter, EditorRequired]
    public string? ApprovedBy { get; set; }

    [Parameter, EditorRequired]
    public DateTimeOffset? WithdrawnAt { get; set; }

    /// <summary>What a version out of force is called: "replaced", "withdrawn".</summary>
    [Parameter]
    public string Gone { get; set; } = "replaced";
}
