using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>What the demo's people do with its three testers.</summary>
internal sealed class DemoInstrumentActs(DemoCast cast)
{
    public const string First = "VP-1";
    public const string Second = "VP-2";

    /// <summary>The one that expands three times.</summary>
    public const string Third = "VP-3";

    // A pure compound with a band of the demo's own, from no standard; free of air for the tester that takes the gas off.
    private const string Fluid = "2,2-dimethylbutane";
    private const string Note = "band: demo figures, not from any standard";
    private const decimal Centre = 74.0m;
    private const decimal CentreFreeOfAir = 68.0m;
    private const decimal HalfBand = 1.5m;
    private const decimal Spread = 0.25m;

    private readonly KeepInstrument _keepInstrument = new(cast.Open);
    private readonly RecordVerification _recordVerification = new(cast.Open, cast.Clock);

    public async Task Add(string by, string code, DateOnly calibrated, DateOnly due, CancellationToken cancel)
    {
        var instrument = new Instrument
        {
            Code = code,
            Name = $"Vapour-pressure tester {code[^1]}",
            SerialNumber = $"DEMO-{code[^1]}",
            Location = "Fuels bench",
            Methods = code == Third ? [TestMethods.En13016Part3, TestMethods.AstmD6378] : [TestMethods.En13016Part1, TestMethods.AstmD5191],
            CalibratedOn = calibrated,
            CalibrationDueOn = due,
            LowKpa = 7m,
            HighKpa = 150m,
        };
        DemoCast.Must(await _keepInstrument.Add(cast[by], instrument, cancel), $"adding {code}");
    }

    /// <param name="by">Who measures the fluid.</param>
    /// <param name="code">On which tester.</param>
    /// <param name="bias">How much above the truth the tester reads, in kPa.</param>
    /// <param name="cancel">Ends the wait.</param>
    public async Task Verify(string by, string code, decimal bias, CancellationToken cancel)
    {
        var at = cast.Clock.GetUtcNow();
        var name = $"verify {code} at {at:O}";
        var centre = code == Third ? CentreFreeOfAir : Centre;
        var reading = centre + (Spread * DemoName.Scatter(name)) + bias;
        var request = new RecordVerification.Request(
            DemoName.Id(name), code, Fluid, "DEMO-22-4", Kpa(reading), Kpa(centre - HalfBand), Kpa(centre + HalfBand), null, Note);
        DemoCast.Must(await _recordVerification.Run(cast[by], request, cancel), $"verifying {code}");
    }

    public async Task Stop(string by, string code, string reason, CancellationToken cancel)
    {
        var version = await VersionOf(code, cancel);
        DemoCast.Must(await _keepInstrument.Stop(cast[by], code, version, reason, cancel), $"stopping {code}");
    }

    public async Task PutBack(string by, string code, string reason, CancellationToken cancel)
    {
        var version = await VersionOf(code, cancel);
        DemoCast.Must(await _keepInstrument.PutBack(cast[by], code, version, reason, cancel), $"putting {code} back");
    }

    public async Task Calibrate(string by, string code, DateOnly on, DateOnly due, CancellationToken cancel)
    {
        var version = await VersionOf(code, cancel);
        DemoCast.Must(await _keepInstrument.Calibrated(cast[by], code, version, on, due, "certificate DEMO-CAL", cancel), $"calibrating {code}");
    }

    private async Task<Guid> VersionOf(string code, CancellationToken cancel)
    {
        await using var lab = cast.Open();
        return await lab.Instruments.Where(i => i.Code == code).Select(i => i.Version).FirstAsync(cancel);
    }

    private static string Kpa(decimal value) => $"{Rounding.Text(value, 1)} kPa";
}
