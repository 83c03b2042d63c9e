using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The fields of a batch, for a new one and for a change.</summary>
public sealed partial class BatchForm : ComponentBase
{
    [Parameter, EditorRequired]
    public BatchEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public BatchChoices Choices { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Number and grade can be given once.</summary>
    [Parameter]
    public bool IsNew { get; set; }
}
