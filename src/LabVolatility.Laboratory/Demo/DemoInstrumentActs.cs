using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>What the demo's people do with its two testers.</summary>
internal sealed class DemoInstrumentActs(DemoCast cast)
{
    public const string First = "VP-1";
    public const string Second = "VP-2";

    // A pure compound with a band of the demo's own, from no standard.
    private const string Fluid = "2,2-dimethylbutane";
    private const string Note = "band: demo figures, not from any standard";
    private const decimal Centre = 74.0m;
    private const decimal HalfBand = 1.5m;
    private const decimal Spread = 0.25m;

    private readonly KeepInstrument _keepInstrument = new(cast.Open);
    private readonly RecordVerification _recordVerification = new(cast.Open, cast.Clock);

    public async Task Add(string by, string code, DateOnly calibrated, DateOnly due, CancellationToken cancel)
    {
        if (await Find(code, cancel) is not null)
            return;
        var instrument = new Instrument
        {
            Code = code,
            Name = $"Vapour-pressure tester {code[^1]}",
            SerialNumber = $"DEMO-{code[^1]}",
            Location = "Fuels bench",
            Methods = [TestMethods.En13016Part1, TestMethods.AstmD5191],
            CalibratedOn = calibrated,
            CalibrationDueOn = due,
            LowKpa = 7m,
            HighKpa = 150m,
        };
        DemoCast.Must(await _keepInstrument.Add(cast[by], instrument, cancel), $"adding {code}");
    }

    /// <param name="by">Who measures the fluid.</param>
    /// <param name="code">On which tester.</param>
    /// <param name="isOff">True: the reading is out of its band.</param>
    /// <param name="cancel">Ends the wait.</param>
    public async Task Verify(string by, string code, bool isOff, CancellationToken cancel)
    {
        var at = cast.Clock.GetUtcNow();
        var name = $"verify {code} at {at:O}";
        var reading = Centre + (Spread * DemoName.Scatter(name)) + (isOff ? 2m * HalfBand : 0m);
        var request = new RecordVerification.Request(
            DemoName.Id(name), code, Fluid, "DEMO-22-4", Kpa(reading), Kpa(Centre - HalfBand), Kpa(Centre + HalfBand), null, Note);
        DemoCast.Must(await _recordVerification.Run(cast[by], request, cancel), $"verifying {code}");
    }

    public async Task Stop(string by, string code, string reason, CancellationToken cancel)
    {
        if (await Find(code, cancel) is { InService: true } tester)
            DemoCast.Must(await _keepInstrument.Stop(cast[by], code, tester.Version, reason, cancel), $"stopping {code}");
    }

    public async Task PutBack(string by, string code, string reason, CancellationToken cancel)
    {
        if (await Find(code, cancel) is { InService: false } tester)
            DemoCast.Must(await _keepInstrument.PutBack(cast[by], code, tester.Version, reason, cancel), $"putting {code} back");
    }

    public async Task Calibrate(string by, string code, DateOnly on, DateOnly due, CancellationToken cancel)
    {
        if (await Find(code, cancel) is { } tester && tester.CalibratedOn != on)
            DemoCast.Must(await _keepInstrument.Calibrated(cast[by], code, tester.Version, on, due, "certificate DEMO-CAL", cancel), $"calibrating {code}");
    }

    private async Task<Instrument?> Find(string code, CancellationToken cancel)
    {
        await using var lab = cast.Open();
        return await lab.Instruments.AsNoTracking().FirstOrDefaultAsync(i => i.Code == code, cancel);
    }

    private static string Kpa(decimal value) => $"{Rounding.Text(value, 1)} kPa";
}
