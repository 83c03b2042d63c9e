using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>A number as typed, unit and all; its normal form stands below. A scanned label is refused and sent to the scan box.</summary>
public sealed partial class ReadingField : ComponentBase
{
    private string? _refused;

    /// <summary>The field's JSON pointer, such as "/readings/totalPressure".</summary>
    [Parameter, EditorRequired]
    public string Field { get; set; } = "";

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>The unit when none is typed.</summary>
    [Parameter]
    public string? Unit { get; set; }

    /// <summary>What is asked for, before anything is typed.</summary>
    [Parameter]
    public string? Hint { get; set; }

    [Parameter]
    public string? Value { get; set; }

    [Parameter]
    public EventCallback<string?> ValueChanged { get; set; }

    /// <summary>The normal form of what was understood: "62,1 → 62.1 kPa".</summary>
    [Parameter]
    public string? Echo { get; set; }

    [Parameter]
    public string? Problem { get; set; }

    /// <summary>Raised with a label of ours that landed here.</summary>
    [Parameter]
    public EventCallback<string> Misplaced { get; set; }

    private string Id => FieldIds.Of(Field);

    private string? Shown => _refused ?? Problem;

    private Task TakeAsync(string? typed)
    {
        if (ScanCode.LooksLikeOurs(typed))
        {
            _refused = "That was a label, not a reading: it went to the scan box.";
            return Misplaced.InvokeAsync(typed!.Trim());
        }

        _refused = null;
        return ValueChanged.InvokeAsync(string.IsNullOrWhiteSpace(typed) ? null : typed);
    }
}
