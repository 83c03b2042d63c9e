using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>Findings, the blocking ones first; announced when they change.</summary>
public sealed partial class FindingList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<Finding> Findings { get; set; } = [];

    /// <summary>What to say when there are none; nothing is said when null.</summary>
    [Parameter]
    public string? WhenNone { get; set; }
}
