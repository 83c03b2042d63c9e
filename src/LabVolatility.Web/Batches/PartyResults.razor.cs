using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>What inspectors, recipients and third laboratories found, held beside ours.</summary>
public sealed partial class PartyResults : ComponentBase
{
    private bool _open;
    private int _shown;

    [Parameter, EditorRequired]
    public Evidence Evidence { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<PartyResultRequest> Entered { get; set; }

    [Parameter]
    public EventCallback<(Guid Result, string? Reason)> Withdrawn { get; set; }

    private bool MayEnter => Actor.May(Right.Decide);

    // Once another one stands in the list, the form has done its work.
    protected override void OnParametersSet()
    {
        if (Evidence.Parties.Count > _shown)
            _open = false;
        _shown = Evidence.Parties.Count;
    }
}
