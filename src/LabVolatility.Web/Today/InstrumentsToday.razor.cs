using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>Whether each instrument may be used today, those that may not first.</summary>
public sealed partial class InstrumentsToday : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<InstrumentLine> Instruments { get; set; } = [];

    private static string Deviation(Verification? check) => InstrumentLine.DeviationKpa(check) is { } deviation
        ? (deviation > 0 ? "+" : "") + Rounding.Text(deviation, 2).Replace('-', '\u2212')
        : "no reading typed";
}
