using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>Drafts r and R of a method.</summary>
public sealed partial class PrecisionForm : ComponentBase
{
    private PrecisionDraft _draft = new();
    private IReadOnlyList<Problem> _problems = [];
    private bool _busy;

    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    /// <summary>Raised once the draft is stored.</summary>
    [Parameter]
    public EventCallback Drafted { get; set; }

    [Inject]
    private KeepPrecision Keep { get; set; } = null!;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    protected override void OnInitialized() => _draft = PrecisionDraft.For(Method);

    private async Task DraftAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            if (_draft.Read(Method, out _problems) is not { } entry)
                return;
            var answer = await Keep.Draft(await People.GetAsync(), entry);
            _problems = answer.Problems;
            if (!answer.Ok)
                return;
            _draft = PrecisionDraft.For(Method);
            await Drafted.InvokeAsync();
        }
        finally
        {
            _busy = false;
        }
    }
}
