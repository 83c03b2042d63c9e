using LabVolatility.Core.Assessment;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Enters another party's result beside ours: it informs, it never enters our mean and never decides.</summary>
public sealed class EnterPartyResult(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "enter party result";

    public async Task<Answer<Guid>> Run(Actor actor, PartyResultRequest request, CancellationToken cancel = default)
    {
        if (actor.IsKey || actor.Lacks(Right.Decide, "Entering another party's result") is not null)
            return Answer<Guid>.Forbidden($"Entering another party's result is for the {Rights.HoldersText(Right.Decide)}.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<Guid>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<Guid>.Repeated(Guid.Parse(known));
        var batch = await context.Batches.AsNoTracking().FirstOrDefaultAsync(b => b.Number == request.Batch, cancel);
        if (batch is null)
            return Answer<Guid>.NotFound($"There is no batch {request.Batch}.");
        var now = clock.GetUtcNow();
        var today = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel)).Day(now);
        var samples = await context.Samples.Where(s => s.BatchId == batch.Id).Select(s => s.Number).ToListAsync(cancel);
        if (PartyResultProblems.Of(request, today, samples) is { Count: > 0 } problems)
            return Answer<Guid>.Invalid(problems);

        var result = Make(request, batch.Id, actor, now);
        context.PartyResults.Add(result);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = result.Id.ToString(), At = now });
        context.Act = actor.Does("enter another party's result");
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(context, [batch.Id], $"a result of {result.Party} was entered", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(result.Id);
    }

    private static PartyResult Make(PartyResultRequest request, Guid batch, Actor actor, DateTimeOffset now)
    {
        _ = QuantityText.TryReadPressure(request.Value, PressureUnit.Kilopascal, out var value, out _);
        var quantity = request.Quantity!.Trim();
        return new PartyResult
        {
            Id = Guid.CreateVersion7(now),
            BatchId = batch,
            Kind = request.Kind,
            Party = request.Party!.Trim(),
            Laboratory = request.Laboratory!.Trim(),
            SampleNumber = request.Sample,
            Quantity = quantity,
            Correlation = LimitAnswer.CorrelationOf(quantity, request.Method!, Blank(request.Correlation)),
            Method = request.Method!,
            Edition = Blank(request.Edition),
            Typed = request.Value!.Trim(),
            Value = value.Value,
            Unit = value.Unit.Symbol(),
            Count = request.Count,
            Hazy = request.Hazy,
            MeasuredOn = request.MeasuredOn!.Value,
            Reference = Blank(request.Reference),
            Seals = Blank(request.Seals),
            EnteredBy = actor.Id,
            EnteredByName = actor.Name,
            EnteredAt = now,
        };
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
