using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>An instant on the laboratory's clock; the zone is named once, at the foot of the page.</summary>
public sealed partial class Stamp : ComponentBase
{
    [Parameter, EditorRequired]
    public DateTimeOffset? At { get; set; }

    /// <summary>Shows 14:05 without the date.</summary>
    [Parameter]
    public bool TimeOnly { get; set; }

    [Parameter]
    public string WhenNone { get; set; } = "never";

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
