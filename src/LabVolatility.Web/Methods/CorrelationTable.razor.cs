using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>Correlations, a row for each unit that they are printed in.</summary>
public sealed partial class CorrelationTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<Correlation> Correlations { get; set; } = [];

    [Parameter]
    public string Caption { get; set; } = "Correlations";
}
