using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>A secret that is shown once; takes the focus, so that it is on the screen wherever the page was scrolled to.</summary>
public sealed partial class OneTimeSecret : ComponentBase
{
    private ElementReference _box;
    private string? _shown;

    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    [Parameter, EditorRequired]
    public string What { get; set; } = "";

    [Parameter, EditorRequired]
    public string? Secret { get; set; }

    [Parameter]
    public EventCallback Done { get; set; }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_shown == Secret)
            return;
        _shown = Secret;
        if (RendererInfo.IsInteractive)
            await _box.FocusAsync();
    }
}
