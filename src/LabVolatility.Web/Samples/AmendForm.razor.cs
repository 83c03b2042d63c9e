using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Corrects what was typed, or sets a determination aside; always with a reason.</summary>
public sealed partial class AmendForm : ComponentBase
{
    private Guid _command = Guid.NewGuid();
    private IReadOnlyList<Problem> _wrong = [];
    private int _revision;
    private bool _sent;
    private bool _outrun;
    private (string?, string?, string?, string?, string?, string, string?) _filled;
    private string? _pressure;
    private string? _temperature;
    private string? _ratio;
    private string? _chilled;
    private string? _fill;
    private string _look = "clear";
    private string? _air;
    private bool _aside;
    private string? _cause;
    private string? _reason;

    [Parameter, EditorRequired]
    public DeterminationState One { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public bool Busy { get; set; }

    [Parameter, EditorRequired]
    public EventCallback<AmendDetermination.Request> Amended { get; set; }

    // Filled from the current revision, anew only after the person's own amendment: neither a refusal nor somebody else's
    // amendment throws away what was typed.
    protected override void OnParametersSet()
    {
        var isOwn = _sent && Problems.Count == 0;
        if (_revision == One.Current.Revision)
            return;
        if (_revision > 0 && !isOwn && IsTouched)
        {
            _outrun = true;
            return;
        }

        (_sent, _outrun) = (false, false);
        _revision = One.Current.Revision;
        _command = Guid.NewGuid();
        var (readings, handling) = (One.Current.Readings, One.Current.Handling);
        (_pressure, _temperature, _ratio) = (Typed(readings.TotalPressure), Typed(readings.Temperature), Typed(readings.VaporLiquidRatio));
        (_chilled, _fill) = (Typed(handling.ChilledTo), handling.FillPercent is { } fill ? Rounding.Plain(fill) : null);
        _look = handling.Phases > 1 ? "two" : handling.Hazy ? "hazy" : "clear";
        _air = handling.AirSaturated switch { true => "yes", false => "no", _ => "" };
        (_aside, _cause, _reason) = (false, null, null);
        _filled = Fields;
    }

    /// <summary>The revision that what is typed started from.</summary>
    private DeterminationRevision Seen => One.Revisions.First(r => r.Revision == _revision);

    private bool IsTouched => !string.IsNullOrWhiteSpace(_reason) || _aside || _filled != Fields;

    private (string?, string?, string?, string?, string?, string, string?) Fields => (_pressure, _temperature, _ratio, _chilled, _fill, _look, _air);

    // The person has seen both: what is typed now amends what the other one left.
    private void GoOn() => (_outrun, _revision, _command) = (false, One.Current.Revision, Guid.NewGuid());

    // With its unit: "9.1" sent by a program as psi must not become kPa when it is looked at again.
    private static string? Typed(TypedReading? reading) => reading is null
        ? null
        : reading.Typed.Any(char.IsLetter) ? reading.Typed : $"{reading.Typed.Trim()} {reading.Unit.Replace("deg", "°", StringComparison.Ordinal)}".TrimEnd();

    private string Id(string field) => $"amend-{field}-{One.Id:N}";

    private Task AmendAsync()
    {
        var entry = new BenchEntry
        {
            TotalPressure = _pressure,
            Temperature = _temperature,
            VaporLiquidRatio = _ratio,
            ChilledTo = _chilled,
            FillPercent = _fill,
            AirSaturated = _air switch { "yes" => true, "no" => false, _ => null },
            Hazy = _look == "hazy",
            Phases = _look == "two" ? 2 : 1,
            Confirmed = Seen.Handling.Confirmed,
        };
        var (readings, handling, problems) = BenchReading.Read(entry);
        _wrong = problems;
        _sent = problems.Count == 0;
        return problems.Count > 0
            ? Task.CompletedTask
            : Amended.InvokeAsync(new AmendDetermination.Request(
                _command, One.Id, _revision,
                readings with { BarometricPressure = Seen.Readings.BarometricPressure }, handling, _aside, _cause, _reason));
    }
}
