using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>A number on its decimal point: put it in a cell of class "number".</summary>
public sealed partial class NumberCell : ComponentBase
{
    /// <summary>The number as reported, zeros and all; it is shown untouched.</summary>
    [Parameter]
    public string? Text { get; set; }

    /// <summary>A number without a text of its own; shown with the digits that it has.</summary>
    [Parameter]
    public decimal? Value { get; set; }

    [Parameter]
    public string? Unit { get; set; }

    /// <summary>The most decimals in this column: room is kept for them.</summary>
    [Parameter]
    public int Places { get; set; } = 1;

    /// <summary>What stands where there is no number.</summary>
    [Parameter]
    public string WhenNone { get; set; } = "not set";

    private string Shown => (Text ?? Value?.ToString(CultureInfo.InvariantCulture) ?? "").Replace('-', '\u2212');

    private string Whole => Shown.Split('.')[0];

    private string Part => Shown.Contains('.', StringComparison.Ordinal) ? Shown[Shown.IndexOf('.', StringComparison.Ordinal)..] : "";
}
