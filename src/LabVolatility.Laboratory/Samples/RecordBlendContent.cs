using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Records the measured ethanol content of a hand blend; an allowance rests on it, never on the recipe.</summary>
public sealed class RecordBlendContent(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "record blend content";

    /// <param name="CommandId">The same id sent again records nothing new.</param>
    /// <param name="Number">The hand blend's sample.</param>
    /// <param name="EthanolPercent">% (V/V), as typed.</param>
    /// <param name="Method">How it was found.</param>
    public sealed record Request(Guid CommandId, string Number, string? EthanolPercent, string? Method);

    public async Task<Answer<decimal>> Run(Actor actor, Request request, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.Determine))
            return Answer<decimal>.Forbidden($"Entering an ethanol content is for the {Rights.HoldersText(Right.Determine)}.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<decimal>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<decimal>.Repeated(await context.BlendContents.Where(c => c.Id == Guid.Parse(known)).Select(c => c.EthanolPercent).FirstAsync(cancel));
        var blend = await context.Samples.Where(s => s.Number == request.Number && context.HandBlends.Any(b => b.SampleId == s.Id))
            .Select(s => new { s.Id, s.Number, s.BatchId }).FirstOrDefaultAsync(cancel);
        if (blend is null)
            return Answer<decimal>.NotFound($"There is no hand blend {request.Number}.");
        var problems = new List<Problem>();
        if (!QuantityText.TryReadNumber(request.EthanolPercent, 0m, 100m, out var percent, out var problem))
            problems.Add(new Problem("/ethanolPercent", problem!));
        if (string.IsNullOrWhiteSpace(request.Method))
            problems.Add(new Problem("/method", "By which method was it measured? The recipe's own content doesn't do."));
        if (problems.Count > 0)
            return Answer<decimal>.Invalid(problems);

        var now = clock.GetUtcNow();
        var content = new BlendContent
        {
            Id = Guid.CreateVersion7(now), SampleId = blend.Id, EthanolPercent = percent, Method = request.Method!.Trim(), At = now, By = actor.Id,
        };
        context.BlendContents.Add(content);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = content.Id.ToString(), At = now });
        context.Act = actor.Does("record blend content");
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(
            context, blend.BatchId is { } batch ? [batch] : [], $"the ethanol content of hand blend {blend.Number} was recorded", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<decimal>.Done(percent);
    }
}
