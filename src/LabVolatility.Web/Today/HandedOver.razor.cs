using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>The hand-over notes that wait for somebody to take them.</summary>
public sealed partial class HandedOver : ComponentBase
{
    private string? _problem;

    [Parameter, EditorRequired]
    public IReadOnlyList<OpenHandover> Notes { get; set; } = [];

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    /// <summary>Raised after a note was taken.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private TakeHandover Take { get; set; } = null!;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    private async Task TakeAsync(Guid note)
    {
        var answer = await Take.Run(await People.GetAsync(), note);
        _problem = answer.Ok ? null : answer.Text;
        await Changed.InvokeAsync();
    }
}
