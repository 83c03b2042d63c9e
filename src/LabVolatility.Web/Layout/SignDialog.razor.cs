using LabVolatility.Laboratory.People;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>Asks for a signature: name, meaning in full, reason, password. Cancel has the focus; the button names the act.</summary>
/// <remarks>The act checks the password: it is verified once, and a refusal is shown here with all that was typed but the password.</remarks>
public sealed partial class SignDialog : ComponentBase
{
    private readonly string _titleId = $"sign-{Guid.NewGuid():N}";
    private readonly string _reasonId = $"reason-{Guid.NewGuid():N}";
    private readonly string _passwordId = $"password-{Guid.NewGuid():N}";
    private readonly string _problemId = $"problem-{Guid.NewGuid():N}";
    private ElementReference _dialog;
    private SignRequest? _request;
    private Func<Signature, Task<string?>>? _act;
    private Actor? _signer;
    private TaskCompletionSource<bool>? _answer;
    private string? _reason;
    private string? _password;
    private string? _problem;
    private string? _outdated;
    private bool _busy;
    private bool _toShow;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    [Inject]
    private Browser Browser { get; set; } = null!;

    /// <summary>Shows the request and waits.</summary>
    /// <param name="request">What is to be signed.</param>
    /// <param name="act">Runs the act on a signature: what stands against it in words, or null when it was done.</param>
    /// <returns>True when the act was done, false when it was cancelled.</returns>
    public async Task<bool> AskAsync(SignRequest request, Func<Signature, Task<string?>> act)
    {
        _answer?.TrySetResult(false);
        _answer = new TaskCompletionSource<bool>(TaskCreationOptions.RunContinuationsAsynchronously);
        _signer = await People.GetAsync();
        (_request, _act) = (request, act);
        _password = _problem = _outdated = null;
        _reason = request.Reason;
        _toShow = true;
        StateHasChanged();
        return await _answer.Task;
    }

    /// <summary>Says that what the open dialog is about is no longer as it was shown: it can't be signed from here any more.</summary>
    public void Outdate(string why)
    {
        _outdated = why;
        StateHasChanged();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_toShow)
            return;
        _toShow = false;
        await Browser.ShowAsync(_dialog);
    }

    private async Task SignAsync()
    {
        if (_busy || _request is null || _act is null)
            return;
        _busy = true;
        try
        {
            _problem = await ProblemAsync(_request, _act);
            if (_problem is null)
                await FinishAsync(true);

            // Escape closes the browser's dialog whatever runs: a refusal must be seen.
            _toShow = _problem is not null;
        }
        finally
        {
            _password = null;
            _busy = false;
        }
    }

    private async Task<string?> ProblemAsync(SignRequest request, Func<Signature, Task<string?>> act)
    {
        if (_outdated is not null)
            return "Nothing was signed.";
        var reason = string.IsNullOrWhiteSpace(_reason) ? null : _reason.Trim();
        if (request.ReasonLabel is not null && request.ReasonIsDue && reason is null)
            return "Give the reason first, then the password again: it becomes part of the record.";
        if (string.IsNullOrEmpty(_password))
            return "Enter your password: it is your signature.";

        // The person and the roles as they are now, not as they were when the dialog opened.
        var signer = await People.GetAsync();
        return signer.Id == _signer?.Id && signer.Id != Guid.Empty
            ? await act(new Signature(signer, reason, _password))
            : "Your session has ended or your account has changed. Nothing was signed.";
    }

    private Task Cancel() => FinishAsync(false);

    private async Task FinishAsync(bool done)
    {
        if (_request is null || (_busy && !done))
            return;
        (_request, _act, _password) = (null, null, null);
        _answer?.TrySetResult(done);
        await Browser.CloseAsync(_dialog);
    }
}
