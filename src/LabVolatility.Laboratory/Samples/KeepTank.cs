using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Adds a tank, and changes its name, grade and capacity.</summary>
public sealed class KeepTank(Func<LabContext> open)
{
    private const decimal LargestCubicMetres = 1_000_000m;

    public Task<Answer<string>> Add(Actor actor, Tank tank, CancellationToken cancel = default) => Save(actor, null, tank, cancel);

    public Task<Answer<string>> Change(Actor actor, Guid version, Tank wanted, CancellationToken cancel = default) =>
        Save(actor, version, wanted, cancel);

    private async Task<Answer<string>> Save(Actor actor, Guid? version, Tank wanted, CancellationToken cancel)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Keeping the tanks") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        if (await ProblemsAsync(context, wanted, cancel) is { Count: > 0 } problems)
            return Answer<string>.Invalid(problems);
        var tank = await context.Tanks.FirstOrDefaultAsync(t => t.Code == wanted.Code, cancel);
        if (version is null && tank is not null)
            return Answer<string>.Conflict($"There is a tank {wanted.Code} already.");
        if (version is not null && tank is null)
            return Answer<string>.NotFound($"There is no tank \"{wanted.Code}\".");
        if (version is not null && tank!.Version != version)
            return Answer<string>.Conflict(await ChangedMeanwhile.TextAsync<Tank>(context, wanted.Code, wanted.Code, cancel));

        tank ??= context.Tanks.Add(new Tank { Code = wanted.Code, Name = wanted.Name }).Entity;
        tank.Name = wanted.Name.Trim();
        tank.GradeCode = wanted.GradeCode;
        tank.CapacityCubicMetres = wanted.CapacityCubicMetres;
        context.Act = actor.Does(version is null ? "add tank" : "change tank");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(tank.Code);
    }

    private static async Task<List<Problem>> ProblemsAsync(LabContext context, Tank tank, CancellationToken cancel)
    {
        var problems = new List<Problem>();
        if (CodeProblems.Of(tank.Code) is { } code)
            problems.Add(code);
        if (CodeProblems.OfName(tank.Name) is { } name)
            problems.Add(name);
        if (tank.CapacityCubicMetres is <= 0 or > LargestCubicMetres)
            problems.Add(new Problem("/capacity", "A capacity is more than 0 and at most 1,000,000 m³."));
        if (tank.GradeCode is not null && !await context.Grades.AnyAsync(g => g.Code == tank.GradeCode, cancel))
            problems.Add(new Problem("/grade", $"There is no grade \"{tank.GradeCode}\"."));
        return problems;
    }
}
