using LabVolatility.Laboratory.Bench;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>The determinations that a test has had.</summary>
public sealed partial class MadeList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<DeterminationState> Made { get; set; } = [];
}
