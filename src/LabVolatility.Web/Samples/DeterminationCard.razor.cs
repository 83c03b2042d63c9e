using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>A determination with its results, findings and every revision.</summary>
public sealed partial class DeterminationCard : ComponentBase
{
    [Parameter, EditorRequired]
    public DeterminationState One { get; set; } = null!;

    [Parameter]
    public bool MayTakeOn { get; set; }

    [Parameter]
    public bool MayAmend { get; set; }

    [Parameter]
    public bool Busy { get; set; }

    [Parameter, EditorRequired]
    public EventCallback TakenOn { get; set; }

    [Parameter, EditorRequired]
    public EventCallback<AmendDetermination.Request> Amended { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    private static string Readings(DeterminationRevision revision) => string.Join(" · ", new[]
    {
        Said("pressure", revision.Readings.TotalPressure),
        Said("gas", revision.Readings.GasPressure),
        revision.Readings.Expansions.Count == 0 ? null : $"expansions {string.Join("; ", revision.Readings.Expansions.Select(e => $"{e.Pressure.Typed.Trim()} at {e.Volume.Typed.Trim()}"))}",
        Said("specimen", revision.Readings.LiquidVolume),
        Said("taken in at", revision.Readings.IntroductionTemperature),
        Said("temperature", revision.Readings.Temperature),
        Said("V/L", revision.Readings.VaporLiquidRatio),
        Said("barometer", revision.Readings.BarometricPressure),
    }.OfType<string>());

    private static string Handling(DeterminationRevision revision)
    {
        var handling = revision.Handling;
        return string.Join(" · ", new[]
        {
            Said("chilled to", handling.ChilledTo),
            handling.FillPercent is { } fill ? $"{Rounding.Plain(fill)} % full" : null,
            handling.RinseCycles is { } rinses ? $"{rinses} rinses" : null,
            handling.ConsecutiveDeterminations is { } runs and > 1 ? $"{runs} runs on the container" : null,
            handling.AtEquilibrium == false ? "the pressure was still moving" : null,
            handling.AirSaturated switch { true => "air-saturated", false => "not air-saturated", _ => null },
            handling.Phases > 1 ? $"{handling.Phases} phases" : handling.Hazy ? "hazy" : "clear",
        }.OfType<string>());
    }

    private static string? Said(string what, TypedReading? reading) =>
        reading is null ? null : $"{what} \"{reading.Typed.Trim()}\" = {Rounding.Plain(reading.Value)} {reading.Unit.Replace("deg", "°", StringComparison.Ordinal)}".TrimEnd();
}
