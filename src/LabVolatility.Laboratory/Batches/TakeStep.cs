using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Takes the next step of the grade's tree: further containers are asked for, or samples are called for anew.</summary>
public sealed class TakeStep(Func<LabContext> open, TimeProvider clock)
{
    public const string Rule = "steps-are-agreed-beforehand";
    private const string CommandName = "take step";

    public async Task<Answer<Guid>> Run(Actor actor, TakeStepRequest request, CancellationToken cancel = default)
    {
        if (actor.IsKey || actor.Lacks(Right.Decide, "Taking a step of the tree") is not null)
            return Answer<Guid>.Forbidden($"Taking a step of the tree is for the {Rights.HoldersText(Right.Decide)}.");
        if (string.IsNullOrWhiteSpace(request.Reason))
            return Answer<Guid>.Invalid(new Problem("/reason", "Say why the step is taken: the reason stays with the record."));
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
        var evidence = await BatchAssessing.WorkOutAsync(context, batch.Id, cancel);
        var inForce = await Decide.InForceAsync(context, batch.Number, cancel);
        var advice = await RetestStanding.AdviseAsync(context, batch, evidence, inForce, today, cancel);
        if (advice is not { Kind: not null } || (advice.Occasion, advice.Subject, advice.Place) != (request.Occasion, request.Subject, request.Place))
            return Answer<Guid>.Conflict($"The batch stands otherwise now. {advice?.Words ?? "Nothing calls for a step."}");
        if (advice.Kind == RetestKind.HoldAndCall)
            return Answer<Guid>.Refused(new Problem("", "A hold is a decision: sign it.", Rule));

        var samples = await ActAsync(context, batch, advice, actor, now, cancel);
        var step = Step(batch, advice, samples, request.Reason.Trim(), actor, now);
        context.StepsTaken.Add(step);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = step.Id.ToString(), At = now });
        context.Act = actor.Does("take step", request.Reason.Trim());
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(context, [batch.Id], $"a step was taken: {advice.Words}", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<Guid>.Done(step.Id);
    }

    private static async Task<IReadOnlyList<string>> ActAsync(
        LabContext context, Batch batch, RetestAdvice advice, Actor actor, DateTimeOffset now, CancellationToken cancel)
    {
        if (advice.TestId is { } testId)
        {
            var test = await context.AssignedTests.FirstAsync(t => t.Id == testId, cancel);
            (test.Wanted, test.State, test.Why) = (advice.Wanted!.Value, TestState.Waiting, $"{advice.Found} {advice.Words}");
        }

        return advice.Kind is RetestKind.Resample or RetestKind.MixAndResample
            ? await CallForAsync(context, batch, advice.Samples, actor, now, cancel)
            : advice.Samples;
    }

    // A new sample of the same level and tank for each; when it was drawn and by whom is said when it is received.
    private static async Task<IReadOnlyList<string>> CallForAsync(
        LabContext context, Batch batch, IReadOnlyList<string> numbers, Actor actor, DateTimeOffset now, CancellationToken cancel)
    {
        var grade = await context.Grades.AsNoTracking().FirstAsync(g => g.Code == batch.GradeCode, cancel);
        var originals = await context.Samples.AsNoTracking().Include(s => s.Containers)
            .Where(s => numbers.Contains(s.Number)).OrderBy(s => s.Number).ToListAsync(cancel);
        var called = new List<string>();
        foreach (var original in originals)
        {
            var request = new SampleRequest
            {
                Level = original.Level,
                SamplePoint = original.SamplePointCode,
                SampledAt = now,
                SampledBy = "",
                Containers = [.. original.Containers.OrderBy(c => c.Number).Select(c => new ContainerRequest(c.Kind, c.VolumeMillilitres))],
                Note = $"resample of {original.Number}",
            };
            var number = await RegisterSample.NextNumberAsync(context, now, cancel);
            context.Samples.Add(RegisterSample.Make(request, grade, batch, original.TankCode, number, actor.Id, now, original.Id));
            called.Add(number);
        }

        return called;
    }

    private static StepTaken Step(
        Batch batch, RetestAdvice advice, IReadOnlyList<string> samples, string reason, Actor actor, DateTimeOffset now) => new()
        {
            Id = Guid.CreateVersion7(now),
            BatchId = batch.Id,
            Occasion = advice.Occasion,
            Subject = advice.Subject,
            Place = advice.Place,
            Branch = advice.Branch,
            Kind = advice.Kind!.Value,
            TestId = advice.TestId,
            Wanted = advice.Wanted,
            Samples = samples,
            Found = advice.Found,
            Reason = reason,
            By = actor.Id,
            ByName = actor.Name,
            At = now,
        };
}
