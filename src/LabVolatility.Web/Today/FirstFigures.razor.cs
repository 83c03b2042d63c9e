using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>The first numbers of the day, large, side by side.</summary>
public sealed partial class FirstFigures : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<TodayFigure> Figures { get; set; } = [];
}
