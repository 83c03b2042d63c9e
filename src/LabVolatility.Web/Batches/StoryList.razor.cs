using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>What happened to the batch, the latest first.</summary>
public sealed partial class StoryList : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<BatchEvent> Story { get; set; } = [];

    [Parameter, EditorRequired]
    public Guid BatchId { get; set; }
}
