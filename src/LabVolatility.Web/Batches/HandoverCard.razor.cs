using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>A hand-over note: what, by whom, by when, and who took it.</summary>
public sealed partial class HandoverCard : ComponentBase
{
    [Parameter, EditorRequired]
    public HandoverNote Note { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    /// <summary>Raised with the note's id when the person takes it.</summary>
    [Parameter]
    public EventCallback<Guid> Taken { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private bool MayTake => Actor.May(Right.Decide) && Note.By != Actor.Id;
}
