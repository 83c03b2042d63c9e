using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Instruments;

/// <summary>Enters the day's verification fluid as in or out of its band. Out of band stops the instrument and marks what rests on it.</summary>
public sealed class RecordVerification(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "record verification";

    /// <param name="CommandId">The same id sent again stores nothing new.</param>
    /// <param name="Instrument">Code of the instrument.</param>
    /// <param name="Fluid">The verification fluid.</param>
    /// <param name="Lot">Its lot.</param>
    /// <param name="Reading">Total pressure as typed; blank where only the verdict is entered.</param>
    /// <param name="BandLow">Lower end of the band as typed.</param>
    /// <param name="BandHigh">Upper end of the band as typed.</param>
    /// <param name="InBand">The verdict where no band is typed.</param>
    /// <param name="Note">Anything else.</param>
    public sealed record Request(
        Guid CommandId, string Instrument, string? Fluid, string? Lot, string? Reading, string? BandLow, string? BandHigh, bool? InBand, string? Note);

    public async Task<Answer<bool>> Run(Actor actor, Request request, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.CheckInstruments))
            return Answer<bool>.Forbidden($"Entering checks is for the {Rights.HoldersText(Right.CheckInstruments)}.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<bool>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<bool>.Repeated(await context.Verifications.Where(v => v.Id == Guid.Parse(known)).Select(v => v.InBand).FirstAsync(cancel));
        if (!await context.Instruments.AnyAsync(i => i.Code == request.Instrument, cancel))
            return Answer<bool>.NotFound($"There is no instrument \"{request.Instrument}\".");
        var problems = new List<Problem>();
        var judged = VerificationBand.Read(request, problems);
        if (problems.Count > 0)
            return Answer<bool>.Invalid(problems);

        var now = clock.GetUtcNow();
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var verification = Guid.CreateVersion7(now);
        context.Verifications.Add(new Verification
        {
            Id = verification,
            InstrumentCode = request.Instrument,
            On = time.Day(now),
            At = now,
            By = actor.Id,
            Fluid = request.Fluid!.Trim(),
            Lot = request.Lot,
            Typed = string.IsNullOrWhiteSpace(request.Reading) ? null : request.Reading.Trim(),
            ReadingKpa = judged.Reading,
            BandLowKpa = judged.Low,
            BandHighKpa = judged.High,
            InBand = judged.InBand,
            Note = request.Note,
        });
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = verification.ToString(), At = now });
        context.Act = actor.Does("record verification", request.Note);
        await context.SaveChangesAsync(cancel);
        await MarkAsync(context, request.Instrument, time.Day(now), time, judged.InBand, now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<bool>.Done(judged.InBand);
    }

    private static async Task MarkAsync(
        LabContext context, string instrument, DateOnly day, LaboratoryTime time, bool inBand, DateTimeOffset now, CancellationToken cancel)
    {
        // A day is at most 25 h long: what was measured since then is told apart by its local day.
        var since = now.AddHours(-26);
        var measured = await context.Determinations.AsNoTracking()
            .Where(d => d.InstrumentCode == instrument && d.MeasuredAt >= since)
            .Join(context.Samples, d => d.SampleId, s => s.Id, (d, s) => new { d.MeasuredAt, s.BatchId }).ToListAsync(cancel);
        var batches = measured.Where(m => m.BatchId is not null && time.Day(m.MeasuredAt) == day)
            .Select(m => m.BatchId!.Value).Distinct().ToList();
        var said = inBand ? "was measured again" : "was outside its band";
        await ReviewMarks.MarkAsync(context, batches, $"the verification fluid of {instrument} {said} on {day:yyyy-MM-dd}", now, cancel);
    }
}
