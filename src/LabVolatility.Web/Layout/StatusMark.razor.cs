using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>A status as shape, word and colour; the only place that draws one.</summary>
public sealed partial class StatusMark : ComponentBase
{
    [Parameter, EditorRequired]
    public Mark Mark { get; set; }

    /// <summary>A longer wording in place of the status word: "ready until 14:00".</summary>
    [Parameter]
    public string? Text { get; set; }

    /// <summary>"small", "big", or null.</summary>
    [Parameter]
    public string? Size { get; set; }

    private MarkShape Shape => MarkShapes.Of(Mark);
}
