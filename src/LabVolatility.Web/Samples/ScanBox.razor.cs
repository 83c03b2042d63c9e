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
    private ScanSaid? _said;
    private bool _gone;

    /// <summary>Raised with the sample that the code names.</summary>
    [Parameter, EditorRequired]
    public EventCallback<ScannedSample> Found { get; set; }

    [Parameter]
    public string Label { get; set; } = "Scan or type a sample number";

    /// <summary>True at the bench: there a sample is good only for measuring.</summary>
    [Parameter]
    public bool Measures { get; set; }

    /// <summary>Asked first: what the code means here beside a sample, such as an instrument; null where it means nothing else.</summary>
    [Parameter]
    public Func<string, Task<ScanSaid?>>? MeansHere { get; set; }

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
        _gone = true;
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
        var module = await Js.InvokeAsync<IJSObjectReference>("import", "./Samples/ScanBox.razor.js");
        if (_gone)
        {
            // The person opened another page meanwhile.
            await module.DisposeAsync();
            return;
        }

        _module = module;
        _self = DotNetObjectReference.Create(this);
        _ear = await _module.InvokeAsync<IJSObjectReference>("listen", _box, _self);
    }

    private Task SubmitAsync() => string.IsNullOrWhiteSpace(_typed) ? Task.CompletedTask : TakeAsync();

    private async Task TakeAsync()
    {
        if (MeansHere is not null && await MeansHere(_typed!) is { } here)
        {
            await SayAsync(here);
            return;
        }

        var answer = await Read.Run(_typed);
        await SayAsync(ScanSaid.Of(answer, Measures));
        if (answer.Value is { } sample)
            await Found.InvokeAsync(sample);
    }

    // What was not found stays in the box, to be looked at and mended.
    private async Task SayAsync(ScanSaid said)
    {
        _said = said;
        if (said.Verdict != ScanVerdict.Unknown)
            _typed = null;
        StateHasChanged();
        if (_module is not null)
            await _module.InvokeVoidAsync("sound", said.Verdict.ToString());
    }
}
