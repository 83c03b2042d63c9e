using System.Globalization;
using LabVolatility.Core.Methods;
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
    private string? _filled;
    private string? _pressure;
    private string? _temperature;
    private string? _ratio;
    private string? _chilled;
    private string? _fill;
    private string? _gas;
    private List<ExpansionRow> _expansions = [];
    private string? _introduction;
    private string? _rinses;
    private string? _runs;
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
        (_gas, _introduction) = (Typed(readings.GasPressure), Typed(readings.IntroductionTemperature));
        _expansions = [.. readings.Expansions.Select(e => new ExpansionRow { Volume = Typed(e.Volume), Pressure = Typed(e.Pressure) })];
        (_rinses, _runs) = (Whole(handling.RinseCycles), Whole(handling.ConsecutiveDeterminations));
        _look = handling.Phases > 1 ? "two" : handling.Hazy ? "hazy" : "clear";
        _air = handling.AirSaturated switch { true => "yes", false => "no", _ => "" };
        (_aside, _cause, _reason) = (false, null, null);
        _filled = Fields;
    }

    private bool TakesGasOff => TestMethods.TryFind(One.Method, out var method) && method.TakesGasOff;

    /// <summary>The revision that what is typed started from.</summary>
    private DeterminationRevision Seen => One.Revisions.First(r => r.Revision == _revision);

    private bool IsTouched => !string.IsNullOrWhiteSpace(_reason) || _aside || _filled != Fields;

    private string Fields => string.Join(
        '\n', [_pressure, _temperature, _ratio, _chilled, _fill, _look, _air, _gas, _introduction, _rinses, _runs, .. _expansions.SelectMany(e => new[] { e.Volume, e.Pressure })]);

    // The person has seen both: what is typed now amends what the other one left.
    private void GoOn() => (_outrun, _revision, _command) = (false, One.Current.Revision, Guid.NewGuid());

    // With its unit: "9.1" sent by a program as psi must not become kPa when it is looked at again.
    private static string? Typed(TypedReading? reading) => reading is null
        ? null
        : reading.Typed.Any(char.IsLetter) ? reading.Typed : $"{reading.Typed.Trim()} {reading.Unit.Replace("deg", "°", StringComparison.Ordinal)}".TrimEnd();

    private static string? Whole(int? count) => count?.ToString(CultureInfo.InvariantCulture);

    private string Id(string field) => $"amend-{field}-{One.Id:N}";

    private Task AmendAsync()
    {
        var entry = new BenchEntry
        {
            TotalPressure = _pressure,
            Temperature = _temperature,
            VaporLiquidRatio = _ratio,
            Expands = _expansions.Count > 0,
            GasPressure = _gas,
            Expansions = [.. _expansions.Select(row => row.Entry)],
            LiquidVolume = Typed(One.Current.Readings.LiquidVolume),
            IntroductionTemperature = _introduction,
            RinseCycles = _rinses,
            ConsecutiveDeterminations = _runs,
            AtEquilibrium = One.Current.Handling.AtEquilibrium,
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
