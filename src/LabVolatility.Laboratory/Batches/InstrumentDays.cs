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

    /// <summary>The verification in force at the moment of measuring, and what came of it later that day, in words.</summary>
    public string Text(DeterminationState determination)
    {
        var day = _time.Day(determination.MeasuredAt);
        var checks = Of(determination);
        if (checks.Count == 0)
            return $"no verification on {day:yyyy-MM-dd}";
        var inForce = checks.LastOrDefault(v => v.At <= determination.MeasuredAt) ?? checks[0];
        var text = $"{inForce.Fluid} {(inForce.InBand ? "in band" : "OUT OF BAND")} on {day:yyyy-MM-dd}"
            + (inForce.Typed is null ? "" : $" ({inForce.Typed})");
        // Another check that is in band says nothing new; one that is out of band does, and so does what followed it.
        var later = checks.SkipWhile(v => v != inForce).Skip(1).SkipWhile(v => v.InBand).ToList();
        return later.Count == 0 ? text
            : $"{text}; later that day OUT OF BAND" + (later[^1].InBand ? ", then in band again" : "");
    }

    /// <summary>True where the last check of the day of measuring was out of band.</summary>
    public bool IsInDoubt(DeterminationState determination) => Of(determination) is [.., { InBand: false }];

    private List<Verification> Of(DeterminationState determination)
    {
        var day = _time.Day(determination.MeasuredAt);
        return [.. _checks.Where(v => v.InstrumentCode == determination.Instrument && v.On == day).OrderBy(v => v.At).ThenBy(v => v.Id)];
    }
}
