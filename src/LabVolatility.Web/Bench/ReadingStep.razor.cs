using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>Instrument, readings, what they give, and the report.</summary>
public sealed partial class ReadingStep : ComponentBase
{
    [Parameter, EditorRequired]
    public BenchTest Test { get; set; } = null!;

    [Parameter, EditorRequired]
    public BenchEntry Entry { get; set; } = null!;

    [Parameter]
    public BenchPreview? Preview { get; set; }

    [Parameter, EditorRequired]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Raised with what is changed in the entry as it is then, which may be newer than the one that is drawn.</summary>
    [Parameter, EditorRequired]
    public EventCallback<Func<BenchEntry, BenchEntry>> Changed { get; set; }

    [Parameter]
    public EventCallback<string> Misplaced { get; set; }

    [Parameter]
    public bool Busy { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Report { get; set; }

    private string TemperatureHint => $"{Test.Method.NominalTemperature} ± {Rounding.Plain(Test.Method.TemperatureTolerance)}";

    private string RatioHint => $"{Rounding.Text(Test.Method.NominalRatio - Test.Method.RatioTolerance, 2)} to {Rounding.Text(Test.Method.NominalRatio + Test.Method.RatioTolerance, 2)}; may be blank";
}
