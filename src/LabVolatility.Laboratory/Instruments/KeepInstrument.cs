using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Instruments;

/// <summary>Adds an instrument, takes it out of service, puts it back, records its calibration dates.</summary>
public sealed class KeepInstrument(Func<LabContext> open)
{
    /// <summary>A new instrument; for the quality manager.</summary>
    public async Task<Answer<string>> Add(Actor actor, Instrument instrument, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Adding instruments") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        if (string.IsNullOrWhiteSpace(instrument.Code) || string.IsNullOrWhiteSpace(instrument.Name))
            return Answer<string>.Invalid(new Problem("/code", "An instrument has a code and a name."));
        return await Change(actor, instrument.Code, null, "add instrument", null, existing =>
            existing is null ? instrument : null, cancel);
    }

    /// <summary>Out of service, with the reason; anybody who checks instruments may stop one.</summary>
    public async Task<Answer<string>> Stop(Actor actor, string code, Guid version, string? reason, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.CheckInstruments, "Taking an instrument out of service") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        if (string.IsNullOrWhiteSpace(reason))
            return Answer<string>.Invalid(new Problem("/reason", "Say why it is out of service."));
        return await Change(actor, code, version, "take instrument out of service", reason.Trim(), existing =>
        {
            existing!.InService = false;
            existing.OutOfServiceReason = reason.Trim();
            return existing;
        }, cancel, (existing, _) => existing.InService ? null : $"{code} is out of service already: {existing.OutOfServiceReason}.");
    }

    /// <summary>Back in service; for the quality manager.</summary>
    public async Task<Answer<string>> PutBack(Actor actor, string code, Guid version, string? reason, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.PutInstrumentBack, "Putting an instrument back in service") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        if (string.IsNullOrWhiteSpace(reason))
            return Answer<string>.Invalid(new Problem("/reason", "Say what was found and done."));
        return await Change(actor, code, version, "put instrument back in service", reason.Trim(), existing =>
        {
            existing!.InService = true;
            existing.OutOfServiceReason = null;
            return existing;
        }, cancel, (existing, _) => existing.InService ? $"{code} is in service already." : null);
    }

    /// <summary>A calibration and when the next is due.</summary>
    public async Task<Answer<string>> Calibrated(
        Actor actor, string code, Guid version, DateOnly on, DateOnly due, string? reference, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.CheckInstruments, "Recording a calibration") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        if (due <= on)
            return Answer<string>.Invalid(new Problem("/due", "The next calibration is due after this one."));
        return await Change(actor, code, version, "record calibration", reference, existing =>
        {
            existing!.CalibratedOn = on;
            existing.CalibrationDueOn = due;
            return existing;
        }, cancel, (_, today) => on > today ? $"It is {today:yyyy-MM-dd}: a calibration on {on:yyyy-MM-dd} has not happened yet." : null);
    }

    private async Task<Answer<string>> Change(
        Actor actor, string code, Guid? version, string act, string? reason, Func<Instrument?, Instrument?> change,
        CancellationToken cancel, Func<Instrument, DateOnly, string?>? wrongState = null)
    {
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var existing = await context.Instruments.FirstOrDefaultAsync(i => i.Code == code, cancel);
        if (version is not null && existing is null)
            return Answer<string>.NotFound($"There is no instrument \"{code}\".");
        if (version is not null && existing!.Version != version)
            return Answer<string>.Conflict(await ChangedMeanwhile.TextAsync<Instrument>(context, code, code, cancel));
        if (existing is not null && wrongState is not null && wrongState(existing, await TodayAsync(context, cancel)) is { } wrong)
            return Answer<string>.Conflict(wrong);
        if (change(existing) is not { } changed)
            return Answer<string>.Conflict($"There is an instrument {code} already.");
        if (existing is null)
            context.Instruments.Add(changed);
        context.Act = actor.Does(act, reason);
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(code);
    }

    private static async Task<DateOnly> TodayAsync(LabContext context, CancellationToken cancel) =>
        LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel)).Day(context.Clock.GetUtcNow());
}
