using System.Globalization;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>Says whether what was typed is saved, and when.</summary>
public sealed partial class DraftLine : ComponentBase
{
    [Parameter, EditorRequired]
    public DraftState State { get; set; }

    [Parameter]
    public DateTimeOffset? At { get; set; }

    /// <summary>Why it could not be saved.</summary>
    [Parameter]
    public string? Why { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private string Time => At is { } at ? Clock.Local(at).ToString("HH:mm:ss", CultureInfo.InvariantCulture) : "";
}
