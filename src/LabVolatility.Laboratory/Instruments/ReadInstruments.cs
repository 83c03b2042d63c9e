using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Instruments;

/// <summary>Reads the instruments as they stand today.</summary>
public sealed class ReadInstruments(Func<LabContext> open, TimeProvider clock)
{
    public async Task<IReadOnlyList<InstrumentLine>> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        return await LinesAsync(context, time.Day(clock.GetUtcNow()), cancel);
    }

    internal static async Task<IReadOnlyList<InstrumentLine>> LinesAsync(LabContext context, DateOnly today, CancellationToken cancel)
    {
        var instruments = await context.Instruments.AsNoTracking().OrderBy(i => i.Code).ToListAsync(cancel);
        var last = await context.Verifications.AsNoTracking()
            .Where(v => !context.Verifications.Any(o => o.InstrumentCode == v.InstrumentCode && o.On > v.On)).ToListAsync(cancel);
        return [.. instruments.Select(i =>
        {
            var newest = last.Where(v => v.InstrumentCode == i.Code).OrderBy(v => v.At).ThenBy(v => v.Id).LastOrDefault();
            return new InstrumentLine(i, Readiness.On(i, newest is null ? [] : [newest], today), newest);
        })];
    }
}
