using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Adds a sample point, and changes its name and tank.</summary>
public sealed class KeepSamplePoint(Func<LabContext> open)
{
    public Task<Answer<string>> Add(Actor actor, SamplePoint point, CancellationToken cancel = default) =>
        Save(actor, null, point, cancel);

    /// <param name="actor">Who changes it.</param>
    /// <param name="seen">As the person saw it: what is otherwise now was changed by somebody else.</param>
    /// <param name="wanted">As it shall be.</param>
    /// <param name="cancel">Cancels it.</param>
    public Task<Answer<string>> Change(Actor actor, SamplePoint seen, SamplePoint wanted, CancellationToken cancel = default) =>
        Save(actor, seen, wanted, cancel);

    private async Task<Answer<string>> Save(Actor actor, SamplePoint? seen, SamplePoint wanted, CancellationToken cancel)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Keeping the sample points") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        if (await ProblemsAsync(context, wanted, cancel) is { Count: > 0 } problems)
            return Answer<string>.Invalid(problems);
        var point = await context.SamplePoints.FirstOrDefaultAsync(p => p.Code == wanted.Code, cancel);
        if (seen is null && point is not null)
            return Answer<string>.Conflict($"There is a sample point {wanted.Code} already.");
        if (seen is not null && point is null)
            return Answer<string>.NotFound($"There is no sample point \"{wanted.Code}\".");
        if (seen is not null && (point!.Name != seen.Name || point.TankCode != seen.TankCode))
            return Answer<string>.Conflict(await ChangedMeanwhile.TextAsync<SamplePoint>(context, wanted.Code, wanted.Code, cancel));

        point ??= context.SamplePoints.Add(new SamplePoint { Code = wanted.Code, Name = wanted.Name }).Entity;
        point.Name = wanted.Name.Trim();
        point.TankCode = wanted.TankCode;
        context.Act = actor.Does(seen is null ? "add sample point" : "change sample point");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(point.Code);
    }

    private static async Task<List<Problem>> ProblemsAsync(LabContext context, SamplePoint point, CancellationToken cancel)
    {
        var problems = new List<Problem>();
        if (CodeProblems.Of(point.Code) is { } code)
            problems.Add(code);
        if (CodeProblems.OfName(point.Name) is { } name)
            problems.Add(name);
        if (point.TankCode is not null && !await context.Tanks.AnyAsync(t => t.Code == point.TankCode, cancel))
            problems.Add(new Problem("/tank", $"There is no tank \"{point.TankCode}\"."));
        return problems;
    }
}
