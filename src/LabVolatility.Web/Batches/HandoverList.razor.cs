using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The hand-over notes of a batch, the latest first, and the form for one more.</summary>
public sealed partial class HandoverList : ComponentBase
{
    private HandoverEntry? _entry;
    private string? _problem;
    private bool _busy;

    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    /// <summary>Raised after a note was written or taken.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private WriteHandover Write { get; set; } = null!;

    [Inject]
    private TakeHandover Take { get; set; } = null!;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private async Task WriteAsync()
    {
        if (_busy || _entry is null)
            return;
        _busy = true;
        var note = _entry.Read(Clock) ?? new Handover(null);
        if (_entry.Problems.Count == 0)
        {
            var answer = await Write.Run(await People.GetAsync(), new WriteHandover.Request(_entry.CommandId, Sheet.Batch.Number, note));
            _entry.Problems = answer.Problems;
            if (answer.Ok)
            {
                (_entry, _problem) = (null, null);
                await Changed.InvokeAsync();
            }
        }

        _busy = false;
    }

    private async Task TakeAsync(Guid note)
    {
        var answer = await Take.Run(await People.GetAsync(), note);
        _problem = answer.Ok ? null : answer.Text;
        await Changed.InvokeAsync();
    }
}
