using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Registers a batch, and changes what may change of it.</summary>
public sealed class RegisterBatch(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "register batch";

    public async Task<Answer<string>> Run(Actor actor, BatchRequest request, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageBatches, "Registering batches") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<string>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<string>.Repeated(known);
        var problems = await BatchProblems.OfAsync(context, request, cancel);
        var grade = await context.Grades.AsNoTracking().FirstOrDefaultAsync(g => g.Code == request.Grade && g.Active, cancel);
        if (grade is null)
            problems.Add(new Problem("/grade", string.IsNullOrWhiteSpace(request.Grade) ? "Which grade is it?" : $"There is no grade \"{request.Grade}\"."));
        if (BatchProblems.OfNumber(request.Number) is { } unfit)
            problems.Add(unfit);
        if (problems.Count > 0)
            return Answer<string>.Invalid(problems);
        var number = request.Number!.Trim();
        if (await context.Batches.AnyAsync(b => b.Number == number, cancel))
            return Answer<string>.Conflict($"There is a batch {number} already.");

        var now = clock.GetUtcNow();
        context.Batches.Add(new Batch
        {
            Id = Guid.CreateVersion7(now),
            Number = number,
            GradeCode = grade!.Code,
            State = request.State ?? grade.State,
            TankCode = request.Tank,
            CubicMetres = request.CubicMetres,
            EthanolPercent = request.EthanolPercent,
            EthanolMethod = Method(request),
            Destinations = request.Destinations,
            From = request.From!.Value,
            Until = request.Until!.Value,
            NeededBy = request.NeededBy,
            Note = request.Note,
            CreatedAt = now,
            CreatedBy = actor.Id,
        });
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = number, At = now });
        context.Act = actor.Does("register batch");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(number);
    }

    /// <summary>Changes tank, volume, ethanol, destinations and period; a release in force is marked where its evidence changes.</summary>
    public async Task<Answer<string>> Change(Actor actor, string number, Guid version, BatchRequest request, CancellationToken cancel = default)
    {
        if (!actor.May(Right.ManageBatches) && !actor.May(Right.Determine))
            return Answer<string>.Forbidden(actor.Lacks(Right.ManageBatches, "Changing batches")!);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var batch = await context.Batches.FirstOrDefaultAsync(b => b.Number == number, cancel);
        if (batch is null)
            return Answer<string>.NotFound($"There is no batch {number}.");
        if (batch.Version != version)
            return Answer<string>.Conflict(await ChangedMeanwhile.TextAsync<Batch>(context, $"Batch {number}", batch.Id, cancel));
        // Who measures may enter the ethanol content they found; where the batch goes is not theirs to say.
        var onlyEthanol = !actor.May(Right.ManageBatches);
        var wanted = onlyEthanol ? Keep(batch) with { EthanolPercent = request.EthanolPercent, EthanolMethod = request.EthanolMethod } : request;
        var problems = await BatchProblems.OfAsync(context, wanted, cancel);
        if (request.Grade is not null && request.Grade != batch.GradeCode)
            problems.Add(new Problem("/grade", $"The grade of a batch stays {batch.GradeCode}: register another batch."));
        if (request.State is not null && request.State != batch.State)
            problems.Add(new Problem("/state", $"The state of a batch stays {batch.State.Text()}: register another batch."));
        if (problems.Count > 0)
            return Answer<string>.Invalid(problems);

        batch.TankCode = wanted.Tank;
        batch.CubicMetres = wanted.CubicMetres;
        batch.EthanolPercent = wanted.EthanolPercent;
        batch.EthanolMethod = Method(wanted);
        batch.Destinations = wanted.Destinations;
        batch.From = wanted.From!.Value;
        batch.Until = wanted.Until!.Value;
        batch.NeededBy = wanted.NeededBy;
        batch.Note = wanted.Note;
        context.Act = actor.Does("change batch");
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(context, [batch.Id], $"batch {number} was changed", clock.GetUtcNow(), cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(number);
    }

    // Blank is no method: the content then counts as not measured.
    private static string? Method(BatchRequest request) =>
        string.IsNullOrWhiteSpace(request.EthanolMethod) ? null : request.EthanolMethod.Trim();

    private static BatchRequest Keep(Batch batch) => new()
    {
        Tank = batch.TankCode,
        CubicMetres = batch.CubicMetres,
        Destinations = batch.Destinations,
        From = batch.From,
        Until = batch.Until,
        NeededBy = batch.NeededBy,
        Note = batch.Note,
    };
}
