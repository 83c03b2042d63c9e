using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>One finding; its severity is told by shape and word.</summary>
public sealed partial class FindingRow : ComponentBase
{
    [Parameter, EditorRequired]
    public Finding Finding { get; set; } = null!;

    private bool Blocking => Finding.Severity == FindingSeverity.Blocking;
}
