using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>A labelled field that keeps what was typed; its problem stands below it.</summary>
public sealed partial class TextEntry : ComponentBase
{
    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>The JSON pointer by which problems name it: "/name".</summary>
    [Parameter, EditorRequired]
    public string Field { get; set; } = "";

    [Parameter]
    public string? Value { get; set; }

    [Parameter]
    public EventCallback<string?> ValueChanged { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public string? Hint { get; set; }

    /// <summary>"decimal" or "numeric" for number pads.</summary>
    [Parameter]
    public string? InputMode { get; set; }

    [Parameter]
    public int Lines { get; set; } = 1;

    [Parameter]
    public bool ReadOnly { get; set; }

    private string Id => FieldIds.Of(Field);

    private string? Problem => Problems.FirstOrDefault(p => p.Field == Field)?.Message;

    private string Invalid => Problem is null ? "false" : "true";

    private string? Described => (Hint, Problem) switch
    {
        (null, null) => null,
        (_, null) => $"{Id}-hint",
        (null, _) => $"{Id}-problem",
        _ => $"{Id}-hint {Id}-problem",
    };
}
