using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LabVolatility.Web.Bench;

/// <summary>The bench's keys, and the page's answer when the browser asks whether all that it told is saved.</summary>
internal sealed class BenchKeys(IJSRuntime js, Func<Task<bool>> saved) : IDisposable
{
    private IJSObjectReference? _module;
    private DotNetObjectReference<BenchKeys>? _self;
    private bool _gone;

    /// <summary>Listens to a test's form, and puts the focus where it begins.</summary>
    /// <param name="root">The form.</param>
    /// <param name="goesOn">Another test was here before: the focus moves on even from one of its fields.</param>
    public async Task AttachAsync(ElementReference root, bool goesOn)
    {
        _module ??= await js.InvokeAsync<IJSObjectReference>("import", "./Bench/BenchTestPage.razor.js");
        if (_gone)
            return;
        _self ??= DotNetObjectReference.Create(this);
        await _module.InvokeVoidAsync("attach", root, _self, goesOn);
    }

    /// <summary>A scan answered this group of choices: the focus goes on behind it.</summary>
    public async Task GoOnAsync(string choice)
    {
        if (_module is not null)
            await _module.InvokeVoidAsync("goOn", choice);
    }

    /// <summary>It was reported: what was typed for it must not turn up in the next determination.</summary>
    public async Task ReportedAsync()
    {
        if (_module is not null)
            await _module.InvokeVoidAsync("reported");
    }

    /// <summary>True once all that the browser told before it asked is saved: it may forget its own copy.</summary>
    [JSInvokable]
    public Task<bool> SavedAsync() => saved();

    public void Dispose()
    {
        _gone = true;
        _self?.Dispose();
    }
}
