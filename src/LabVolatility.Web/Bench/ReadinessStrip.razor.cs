using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>Each instrument in a word, with the deviation of today's verification.</summary>
public sealed partial class ReadinessStrip : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<InstrumentLine> Instruments { get; set; } = [];

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private string Deviation(InstrumentLine line)
    {
        if (line.Last is not { } check || check.On != Clock.Today)
            return "no verification today";
        var when = Clock.TimeText(check.At);
        return InstrumentLine.DeviationKpa(check) is { } deviation
            ? $"verification {(deviation < 0 ? "−" : "+")}{Rounding.Text(Math.Abs(deviation), 2)} kPa from the middle of its band at {when}"
            : $"verification {(check.InBand ? "in band" : "out of band")} at {when}";
    }
}
