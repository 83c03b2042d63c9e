using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>The areas with what is in force there on a day.</summary>
public sealed partial class AreaTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<AreaLine> Lines { get; set; } = [];

    [Parameter, EditorRequired]
    public DateOnly Day { get; set; }

    private static string? Known(AreaLine line) => line.Status == FactStatus.FromMemory
        ? $"{line.FromMemory} from memory"
        : null;
}
