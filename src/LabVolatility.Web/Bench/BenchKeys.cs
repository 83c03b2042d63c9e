using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LabVolatility.Web.Bench;

/// <summary>The bench's keys and the browser's own copy of what is being typed.</summary>
internal sealed class BenchKeys(IJSRuntime js)
{
    private IJSObjectReference? _module;

    /// <summary>Listens to a test's form, and puts the focus where it begins.</summary>
    /// <param name="root">The form.</param>
    /// <param name="goesOn">Another test was here before: the focus moves on even from one of its fields.</param>
    public async Task AttachAsync(ElementReference root, bool goesOn)
    {
        _module ??= await js.InvokeAsync<IJSObjectReference>("import", "./Bench/BenchTestPage.razor.js");
        await _module.InvokeVoidAsync("attach", root, goesOn);
    }

    /// <summary>The server has it: the browser's copy may go.</summary>
    public async Task SavedAsync()
    {
        try
        {
            if (_module is not null)
                await _module.InvokeVoidAsync("saved");
        }
        catch (JSDisconnectedException)
        {
            // The copy stays until the page is open again.
        }
    }

    /// <summary>Lets go without waiting: the page is being left.</summary>
    public void Forget() => _module = null;
}
