using LabVolatility.Laboratory.Today;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>Who decided what in the shift that runs, the latest first.</summary>
public sealed partial class ShiftList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ShiftDecision> Decisions { get; set; } = [];

    [Parameter, EditorRequired]
    public DateTimeOffset Since { get; set; }
}
