using LabVolatility.Core.Limits;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>The calendar's windows as a table: the same data as the drawn year.</summary>
public sealed partial class WindowTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<SeasonWindow> Calendar { get; set; } = [];
}
