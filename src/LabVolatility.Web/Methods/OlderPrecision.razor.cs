using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>Precision of editions that are no longer in force, shown for reading.</summary>
public sealed partial class OlderPrecision : ComponentBase
{
    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    private IReadOnlyList<PrecisionStatement> Older => [.. PublishedPrecision.All.Where(s => s.Method == Method.Designation)];
}
