using LabVolatility.Laboratory.Certificates;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>Whether a cargo certificate still covers all its tanks.</summary>
public sealed partial class CargoStanding : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<NotCovered> Lost { get; set; } = [];
}
