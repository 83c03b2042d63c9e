using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Instruments;

/// <summary>Reads one instrument; null where there is none of that code.</summary>
public sealed class ReadInstrument(Func<LabContext> open, TimeProvider clock)
{
    public const int Shown = 50;

    public async Task<InstrumentSheet?> Run(string code, CancellationToken cancel = default)
    {
        await using var context = open();
        var instrument = await context.Instruments.AsNoTracking().FirstOrDefaultAsync(i => i.Code == code, cancel);
        if (instrument is null)
            return null;
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var now = clock.GetUtcNow();
        var today = time.Day(now);
        var checks = await context.Verifications.AsNoTracking().Where(v => v.InstrumentCode == code)
            .OrderByDescending(v => v.At).ThenByDescending(v => v.Id).Take(Shown).ToListAsync(cancel);
        var people = checks.Select(v => v.By).Distinct().ToList();
        var names = await context.People.AsNoTracking().Where(p => people.Contains(p.Id)).ToDictionaryAsync(p => p.Id, p => p.FullName, cancel);
        // A day is at most 25 h long: what was measured since then is told apart by its local day.
        var since = now.AddHours(-26);
        var measured = await context.Determinations.AsNoTracking()
            .Where(d => d.InstrumentCode == code && d.MeasuredAt >= since).Select(d => d.MeasuredAt).ToListAsync(cancel);
        var line = new InstrumentLine(instrument, Readiness.On(instrument, checks, today), checks.FirstOrDefault());
        return new InstrumentSheet(line, checks, names, measured.Count(at => time.Day(at) == today));
    }
}
