using LabVolatility.Laboratory.Bench;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>The tests that wait, the earliest deadline first.</summary>
public sealed partial class BottlesDue : ComponentBase
{
    private const int Most = 12;

    [Parameter, EditorRequired]
    public IReadOnlyList<WaitingTest> Waiting { get; set; } = [];

    /// <summary>Determinations that wait for an operator.</summary>
    [Parameter]
    public int TakeOn { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
