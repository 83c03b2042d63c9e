using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>How each instrument stood on the days it was used: the verification in force then.</summary>
internal sealed class InstrumentDays
{
    private readonly List<Verification> _checks;
    private readonly LaboratoryTime _time;

    private InstrumentDays(List<Verification> checks, LaboratoryTime time) => (_checks, _time) = (checks, time);

    public static async Task<InstrumentDays> LoadAsync(
        LabContext context, IReadOnlyList<DeterminationState> determinations, LaboratoryTime time, CancellationToken cancel)
    {
        if (determinations.Count == 0)
            return new InstrumentDays([], time);
        var codes = determinations.Select(d => d.Instrument).Distinct().ToList();
        var days = determinations.Select(d => time.Day(d.MeasuredAt)).Distinct().ToList();
        var checks = await context.Verifications.AsNoTracking()
            .Where(v => codes.Contains(v.InstrumentCode) && days.Contains(v.On)).ToListAsync(cancel);
        return new InstrumentDays(checks, time);
    }

    /// <summary>The day's verification in words, the latest of that day.</summary>
    public string Text(DeterminationState determination)
    {
        var day = _time.Day(determination.MeasuredAt);
        var latest = _checks.Where(v => v.InstrumentCode == determination.Instrument && v.On == day)
            .OrderBy(v => v.At).ThenBy(v => v.Id).LastOrDefault();
        return latest is null ? $"no verification on {day:yyyy-MM-dd}"
            : $"{latest.Fluid} {(latest.InBand ? "in band" : "OUT OF BAND")} on {day:yyyy-MM-dd}"
                + (latest.Typed is null ? "" : $" ({latest.Typed})");
    }
}
