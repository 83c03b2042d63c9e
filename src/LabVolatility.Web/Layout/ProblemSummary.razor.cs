using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>All problems in one place; takes the focus when they appear, links to the fields.</summary>
public sealed partial class ProblemSummary : ComponentBase
{
    private ElementReference _box;
    private IReadOnlyList<Problem>? _announced;

    [Parameter, EditorRequired]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (ReferenceEquals(_announced, Problems))
            return;
        _announced = Problems;
        if (Problems.Count > 0 && RendererInfo.IsInteractive)
            await _box.FocusAsync();
    }
}
