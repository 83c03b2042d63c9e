using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The cargo certificates that name a batch, and the way to a new one.</summary>
public sealed partial class CargoList : ComponentBase
{
    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;
}
