using LabVolatility.Laboratory.Bench;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>Determinations without an operator.</summary>
public sealed partial class TakeOnList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<WaitingForPerson> Waiting { get; set; } = [];

    /// <summary>The person measures, so may take one on.</summary>
    [Parameter]
    public bool May { get; set; }

    [Parameter]
    public bool Busy { get; set; }

    [Parameter, EditorRequired]
    public EventCallback<WaitingForPerson> TakenOn { get; set; }
}
