using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>What the readings give under each authority; each number opens.</summary>
public sealed partial class ResultTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ReportedResult> Results { get; set; } = [];

    [Parameter]
    public IReadOnlyList<PrecisionInWords> Precision { get; set; } = [];

    private PrecisionInWords? Fit(ReportedResult result) =>
        Precision.FirstOrDefault(p => p.Quantity == result.Quantity && p.Correlation == result.Correlation);
}
