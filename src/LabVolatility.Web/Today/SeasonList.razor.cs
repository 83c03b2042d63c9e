using LabVolatility.Laboratory.Today;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>When other limits begin to hold at each destination, the earliest first, as a picture of the year and as a list.</summary>
public sealed partial class SeasonList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<SeasonChange> Changes { get; set; } = [];

    [Inject]
    private LabClock Clock { get; set; } = null!;
}
