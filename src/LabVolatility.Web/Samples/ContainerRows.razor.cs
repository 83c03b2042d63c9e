using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>The containers of a sample as typed, a row each.</summary>
public sealed partial class ContainerRows : ComponentBase
{
    [Parameter, EditorRequired]
    public List<ContainerRow> Rows { get; set; } = [];

    /// <summary>The containers are here and were looked at.</summary>
    [Parameter]
    public bool Received { get; set; }

    /// <summary>Kind, volume and number of containers are settled.</summary>
    [Parameter]
    public bool Fixed { get; set; }

    /// <summary>What hangs on the rows: drawn again with each change.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];
}
