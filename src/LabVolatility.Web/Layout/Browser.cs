using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LabVolatility.Web.Layout;

/// <summary>The few things only the browser can do.</summary>
public sealed class Browser(IJSRuntime js) : IAsyncDisposable
{
    private IJSObjectReference? _module;

    /// <summary>Opens a dialog element: focus goes inside and stays there.</summary>
    public Task ShowAsync(ElementReference dialog) => CallAsync("show", dialog);

    public Task CloseAsync(ElementReference dialog) => CallAsync("close", dialog);

    /// <summary>Light, dark, or null to follow the system; remembered for the first paint of the next page.</summary>
    public Task ThemeAsync(string? theme) => CallAsync("theme", theme);

    /// <summary>Whether the system asks for dark pages.</summary>
    public async Task<bool> PrefersDarkAsync() => await (await ModuleAsync()).InvokeAsync<bool>("prefersDark");

    /// <summary>Puts the focus on the element with this id, where there is one.</summary>
    public Task FocusAsync(string id) => CallAsync("focus", id);

    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_module is not null)
                await _module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The browser has gone, and the module with it.
        }
    }

    private async Task CallAsync(string name, object? argument) => await (await ModuleAsync()).InvokeVoidAsync(name, argument);

    private async Task<IJSObjectReference> ModuleAsync() =>
        _module ??= await js.InvokeAsync<IJSObjectReference>("import", "./shell.js");
}
