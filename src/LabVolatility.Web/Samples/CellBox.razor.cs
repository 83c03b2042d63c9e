using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>A field within a table's cell, with its problem below.</summary>
public sealed partial class CellBox : ComponentBase
{
    [Parameter, EditorRequired]
    public string Field { get; set; } = "";

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public bool Disabled { get; set; }

    [Parameter]
    public string? Value { get; set; }

    [Parameter]
    public EventCallback<string?> ValueChanged { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    private string? Wrong => Problems.FirstOrDefault(p => p.Field == Field)?.Message;
}
