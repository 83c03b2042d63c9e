using System.Globalization;
using LabVolatility.Core.Methods;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace LabVolatility.Web.Layout;

/// <summary>A number that opens: reading, correlation, rounding, limit, outcome, each with its source.</summary>
public sealed partial class ArithmeticTrail : ComponentBase
{
    private readonly string _id = $"trail-{Guid.NewGuid():N}";
    private bool _open;

    [Parameter, EditorRequired]
    public IReadOnlyList<ArithmeticStep> Steps { get; set; } = [];

    /// <summary>The number as it stands on the page.</summary>
    [Parameter, EditorRequired]
    public RenderFragment? ChildContent { get; set; }

    /// <summary>The number in words for a screen reader: "DVPE 63.8 kPa".</summary>
    [Parameter, EditorRequired]
    public string Spoken { get; set; } = "";

    /// <summary>Opens towards the right: for numbers at the left edge.</summary>
    [Parameter]
    public bool Left { get; set; }

    private static string Worth(ArithmeticStep step) => step.Value is { } value
        ? $"{value.ToString(CultureInfo.InvariantCulture).Replace('-', '\u2212')} {step.Unit}".TrimEnd()
        : "";

    private void Toggle() => _open = !_open;

    private void Escape(KeyboardEventArgs key)
    {
        if (key.Key == "Escape")
            _open = false;
    }
}
