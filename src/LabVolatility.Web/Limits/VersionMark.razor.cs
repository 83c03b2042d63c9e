using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Draft, approved by whom, or replaced.</summary>
public sealed partial class VersionMark : ComponentBase
{
    [Parameter, EditorRequired]
    public DateTimeOffset? ApprovedAt { get; set; }

    [Parameter, EditorRequired]
    public string? ApprovedBy { get; set; }

    [Parameter, EditorRequired]
    public DateTimeOffset? WithdrawnAt { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
