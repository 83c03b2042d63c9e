using LabVolatility.Laboratory.Today;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>When other limits begin to hold at each destination, the earliest first.</summary>
public sealed partial class SeasonList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<SeasonChange> Changes { get; set; } = [];
}
