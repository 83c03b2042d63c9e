using LabVolatility.Laboratory.Today;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>Decisions that must be looked at again, with the cause.</summary>
public sealed partial class ReviewList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<MarkedDecision> Marked { get; set; } = [];
}
