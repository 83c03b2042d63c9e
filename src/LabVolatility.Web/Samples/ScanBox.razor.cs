using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LabVolatility.Web.Samples;

/// <summary>Takes a scan from anywhere on the page, or a number typed in its place.</summary>
public sealed partial class ScanBox : ComponentBase, IAsyncDisposable
{
    private ElementReference _box;
    private DotNetObjectReference<ScanBox>? _self;
    private IJSObjectReference? _module;
    private IJSObjectReference? _ear;
    private string? _typed;
    private string? _says;
    private bool _bad;

    /// <summary>Raised with what the code names.</summary>
    [Parameter, EditorRequired]
    public EventCallback<ScannedSample> Found { get; set; }

    [Inject]
    private ReadScan Read { get; set; } = null!;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>A scan that landed elsewhere, such as in a number field.</summary>
    [JSInvokable]
    public async Task Scanned(string code)
    {
        _typed = code;
        await TakeAsync();
        StateHasChanged();
    }

    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_ear is not null)
                await _ear.InvokeVoidAsync("stop");
            if (_module is not null)
                await _module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The browser has gone, and its listeners with it.
        }

        _self?.Dispose();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender || !RendererInfo.IsInteractive)
            return;
        _self = DotNetObjectReference.Create(this);
        _module = await Js.InvokeAsync<IJSObjectReference>("import", "./Samples/ScanBox.razor.js");
        _ear = await _module.InvokeAsync<IJSObjectReference>("listen", _box, _self);
    }

    private Task SubmitAsync() => string.IsNullOrWhiteSpace(_typed) ? Task.CompletedTask : TakeAsync();

    private async Task TakeAsync()
    {
        var answer = await Read.Run(_typed);
        _bad = !answer.Ok;
        _says = answer.Value is { } found
            ? $"sample {found.Number}{(found.Container is { } container ? $", container {container}" : "")}."
            : answer.Text;
        if (_module is not null)
            await _module.InvokeVoidAsync("sound", !_bad);
        if (answer.Value is not { } sample)
            return;
        _typed = null;
        await Found.InvokeAsync(sample);
    }
}
