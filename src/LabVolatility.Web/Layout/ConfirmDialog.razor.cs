using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>Asks before an act that can't be undone and needs no signature; Cancel has the focus.</summary>
public sealed partial class ConfirmDialog : ComponentBase
{
    private readonly string _titleId = $"confirm-{Guid.NewGuid():N}";
    private ElementReference _dialog;
    private TaskCompletionSource<bool>? _answer;
    private string? _act;
    private string? _what;
    private bool _toShow;

    [Inject]
    private Browser Browser { get; set; } = null!;

    /// <summary>Shows the question and waits.</summary>
    /// <param name="act">The act, as it stands on the button: "Revoke key planning".</param>
    /// <param name="what">What will happen.</param>
    public Task<bool> AskAsync(string act, string what)
    {
        _answer?.TrySetResult(false);
        _answer = new TaskCompletionSource<bool>(TaskCreationOptions.RunContinuationsAsynchronously);
        (_act, _what, _toShow) = (act, what, true);
        StateHasChanged();
        return _answer.Task;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_toShow)
            return;
        _toShow = false;
        await Browser.ShowAsync(_dialog);
    }

    private Task Cancel() => FinishAsync(false);

    private Task Confirm() => FinishAsync(true);

    private async Task FinishAsync(bool confirmed)
    {
        if (_act is null)
            return;
        _act = null;
        _answer?.TrySetResult(confirmed);
        await Browser.CloseAsync(_dialog);
    }
}
