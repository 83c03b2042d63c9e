using LabVolatility.Laboratory.People;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>Asks for a signature: name, meaning in full, reason, password. Cancel has the focus; the button names the act.</summary>
public sealed partial class SignDialog : ComponentBase
{
    private readonly string _titleId = $"sign-{Guid.NewGuid():N}";
    private readonly string _reasonId = $"reason-{Guid.NewGuid():N}";
    private readonly string _passwordId = $"password-{Guid.NewGuid():N}";
    private readonly string _problemId = $"problem-{Guid.NewGuid():N}";
    private ElementReference _dialog;
    private SignRequest? _request;
    private Actor? _signer;
    private TaskCompletionSource<Signature?>? _answer;
    private string? _reason;
    private string? _password;
    private string? _problem;
    private bool _busy;
    private bool _toShow;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    [Inject]
    private SignaturePassword Passwords { get; set; } = null!;

    [Inject]
    private Browser Browser { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    /// <summary>Shows the request and waits.</summary>
    /// <returns>The signature, or null when it was cancelled.</returns>
    public async Task<Signature?> AskAsync(SignRequest request)
    {
        _answer?.TrySetResult(null);
        _answer = new TaskCompletionSource<Signature?>(TaskCreationOptions.RunContinuationsAsynchronously);
        _signer = await People.GetAsync();
        _request = request;
        _reason = _password = _problem = null;
        _toShow = true;
        StateHasChanged();
        return await _answer.Task;
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
        if (_busy || _request is null)
            return;
        _busy = true;
        try
        {
            await CheckAsync(_request);
        }
        finally
        {
            _password = null;
            _busy = false;
        }
    }

    private async Task CheckAsync(SignRequest request)
    {
        var reason = string.IsNullOrWhiteSpace(_reason) ? null : _reason.Trim();
        if (request.ReasonLabel is not null && request.ReasonIsDue && reason is null)
        {
            _problem = "Give the reason first, then the password again: it becomes part of the record.";
            return;
        }

        // The person and the roles as they are now, not as they were when the dialog opened.
        var signer = await People.GetAsync();
        _problem = signer.Id == _signer?.Id && signer.Id != Guid.Empty
            ? await Passwords.ProblemAsync(signer.Id, _password)
            : "Your session has ended or your account has changed. Nothing was signed.";
        if (_problem is null)
            await FinishAsync(new Signature(signer, request.Meaning, reason, Clock.GetUtcNow()));
    }

    private Task Cancel() => FinishAsync(null);

    private async Task FinishAsync(Signature? signature)
    {
        if (_request is null)
            return;
        _request = null;
        _password = null;
        _answer?.TrySetResult(signature);
        await Browser.CloseAsync(_dialog);
    }
}
