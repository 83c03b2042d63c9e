using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Records a hand blend: a new sample from a blendstock container and ethanol, with its recipe and a label of its own.</summary>
/// <remarks>It speaks of the tank as the blendstock sample does: drawn when that was, and void when that is.</remarks>
public sealed class MakeHandBlend(Func<LabContext> open, TimeProvider clock)
{
    private const string CommandName = "make hand blend";

    /// <returns>The number of the new sample.</returns>
    public async Task<Answer<string>> Run(Actor actor, HandBlendRequest request, CancellationToken cancel = default)
    {
        if (actor.IsKey || !actor.May(Right.Determine))
            return Answer<string>.Forbidden($"Making hand blends is for the {Rights.HoldersText(Right.Determine)}.");
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var earlier = await EarlierCommand.FindAsync(context, request.CommandId, CommandName, cancel);
        if (earlier.IsOther)
            return Answer<string>.Conflict(EarlierCommand.Taken);
        if (earlier.Subject is { } known)
            return Answer<string>.Repeated(known);
        var parent = await context.Samples.Include(s => s.Containers).ThenInclude(c => c.Openings).AsSingleQuery()
            .FirstOrDefaultAsync(s => s.Number == request.Blendstock, cancel);
        if (parent is null)
            return Answer<string>.NotFound($"There is no sample {request.Blendstock}.");

        var now = clock.GetUtcNow();
        var grade = await context.Grades.FirstAsync(g => g.Code == parent.GradeCode, cancel);
        var batch = parent.BatchId is null ? null : await context.Batches.AsNoTracking().FirstAsync(b => b.Id == parent.BatchId, cancel);
        var problems = new List<Problem>();
        var recipe = HandBlendRecipe.Read(request, problems);
        problems.AddRange(await FitAsync(context, parent, batch?.State ?? grade.State, batch?.TankCode, request, recipe, now, cancel));
        CheckContainers(request, recipe, problems);
        if (problems.Count > 0)
            return problems.Any(p => p.Rule is not null) ? Answer<string>.Refused(problems) : Answer<string>.Invalid(problems);

        var sample = await MakeAsync(context, parent, grade, batch, request, recipe, actor, now, cancel);
        context.Commands.Add(new PerformedCommand { Id = request.CommandId, Name = CommandName, Subject = sample.Number, At = now });
        context.Act = actor.Does("make hand blend", request.Note);
        await context.SaveChangesAsync(cancel);
        await ReviewMarks.MarkAsync(context, batch is null ? [] : [batch.Id], $"hand blend {sample.Number} was made", now, cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(sample.Number);
    }

    private static async Task<IEnumerable<Problem>> FitAsync(
        LabContext context, Sample parent, ProductState state, string? batchTank, HandBlendRequest request, HandBlendRecipe recipe,
        DateTimeOffset now, CancellationToken cancel)
    {
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var tank = parent.TankCode ?? batchTank;
        var movements = tank is null ? [] : await context.TankMovements.AsNoTracking()
            .Where(m => m.TankCode == tank && m.At > parent.SampledAt).ToListAsync(cancel);
        return BlendstockFit.Check(
            parent, state, await context.HandBlends.AnyAsync(b => b.SampleId == parent.Id, cancel),
            MovementVoidsSample.Reason(parent, tank, movements, time), request.ContainerNumber, Reading.Volume(recipe.Blendstock), time.Day(now));
    }

    private static void CheckContainers(HandBlendRequest request, HandBlendRecipe recipe, List<Problem> problems)
    {
        if (request.Containers.Count is 0 or > 99)
            problems.Add(new Problem("/containers", "What was the blend put in? A sample has 1 to 99 containers."));
        SampleProblems.CheckContainers(request.Containers, problems);
        if (recipe.Blendstock is null || recipe.Ethanol is null)
            return;
        var made = Reading.Volume(recipe.Blendstock).Value.In(VolumeUnit.Millilitre) + Reading.Volume(recipe.Ethanol).Value.In(VolumeUnit.Millilitre);
        var held = request.Containers.Sum(c => c.VolumeMillilitres * (c.FillPercent ?? 0m) / 100m);
        if (held > made)
            problems.Add(new Problem("/containers", $"The recipe makes {Rounding.Shown(made)} mL; the containers are said to hold {Rounding.Shown(held)} mL. Check volumes and fill levels."));
    }

    private static async Task<Sample> MakeAsync(
        LabContext context, Sample parent, Grade grade, Batch? batch, HandBlendRequest request, HandBlendRecipe recipe, Actor actor,
        DateTimeOffset now, CancellationToken cancel)
    {
        var nominal = Rounding.Text(recipe.Nominal!.Value!.Value, 1);
        var sample = RegisterSample.Make(
            new SampleRequest
            {
                SamplePoint = parent.SamplePointCode,
                Level = parent.Level,
                SampledAt = parent.SampledAt,
                SampledBy = parent.SampledBy,
                ReceivedAt = now,
                Containers = request.Containers,
                Note = $"Hand blend of {parent.Number}, container {request.ContainerNumber}, with {nominal} % (V/V) ethanol nominal, lot {request.EthanolLot!.Trim()}",
            },
            grade, batch, parent.TankCode, await RegisterSample.NextNumberAsync(context, now, cancel), actor.Id, now);
        var used = parent.Containers.First(c => c.Number == request.ContainerNumber);
        context.Samples.Add(sample);
        context.ContainerOpenings.Add(new ContainerOpening { Id = Guid.NewGuid(), ContainerId = used.Id, At = now, By = actor.Id, Why = $"hand blend {sample.Number}" });
        context.HandBlends.Add(new HandBlend
        {
            SampleId = sample.Id,
            BlendstockId = parent.Id,
            BlendstockContainerId = used.Id,
            EthanolLot = request.EthanolLot!.Trim(),
            BlendstockVolume = recipe.Blendstock!,
            EthanolVolume = recipe.Ethanol!,
            Temperature = recipe.Temperature!,
            MadeAt = now,
            MadeBy = actor.Id,
            Confirmed = request.Confirmed,
            Note = string.IsNullOrWhiteSpace(request.Note) ? null : request.Note.Trim(),
        });
        return sample;
    }
}
