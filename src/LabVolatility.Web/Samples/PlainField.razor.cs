using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>A field with its label, and its problem or hint below; the content carries the id that belongs to the field.</summary>
public sealed partial class PlainField : ComponentBase
{
    [Parameter, EditorRequired]
    public string Field { get; set; } = "";

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public string? Hint { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter, EditorRequired]
    public RenderFragment? ChildContent { get; set; }

    private string? Wrong => Problems.FirstOrDefault(p => p.Field == Field)?.Message;
}
