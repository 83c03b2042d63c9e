using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>Takes the source in which a shipped limit was read again.</summary>
public sealed partial class ConfirmFact : ComponentBase
{
    private IReadOnlyList<Problem> _problems = [];
    private string? _source;
    private bool _busy;

    [Parameter, EditorRequired]
    public string Key { get; set; } = "";

    /// <summary>Raised when it is over: true where the limit was confirmed.</summary>
    [Parameter]
    public EventCallback<bool> Done { get; set; }

    [Inject]
    private KeepLimit Keep { get; set; } = null!;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    private async Task ConfirmAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            var answer = await Keep.Confirm(await People.GetAsync(), Key, _source);
            _problems = answer.Problems;
            if (answer.Ok)
                await Done.InvokeAsync(true);
        }
        finally
        {
            _busy = false;
        }
    }
}
