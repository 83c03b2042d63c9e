using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Adds a grade, and changes its name, tests and decision rule.</summary>
public sealed class KeepGrade(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<string>> Add(Actor actor, Grade grade, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Adding grades") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        if (GradeProblems.Of(grade) is { Count: > 0 } problems)
            return Answer<string>.Invalid(problems);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        if (await context.Grades.AnyAsync(g => g.Code == grade.Code, cancel))
            return Answer<string>.Conflict($"There is a grade {grade.Code} already.");
        context.Grades.Add(Apply(new Grade { Code = grade.Code, Name = grade.Name }, grade));
        context.Act = actor.Does("add grade");
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(grade.Code);
    }

    /// <summary>Changes a grade; releases that rest on the earlier rule are marked for review. Samples keep the tests they were assigned.</summary>
    public async Task<Answer<string>> Change(Actor actor, Guid version, Grade wanted, CancellationToken cancel = default)
    {
        if (actor.Lacks(Right.ManageReferenceData, "Changing grades") is { } lacking)
            return Answer<string>.Forbidden(lacking);
        if (GradeProblems.Of(wanted) is { Count: > 0 } problems)
            return Answer<string>.Invalid(problems);
        await using var context = open();
        await using var transaction = await context.BeginWriteAsync(cancel);
        var grade = await context.Grades.FirstOrDefaultAsync(g => g.Code == wanted.Code, cancel);
        if (grade is null)
            return Answer<string>.NotFound($"There is no grade \"{wanted.Code}\".");
        if (grade.Version != version)
            return Answer<string>.Conflict(await ChangedMeanwhile.TextAsync<Grade>(context, grade.Code, grade.Code, cancel));
        if (grade.Kind != wanted.Kind && await context.Samples.AnyAsync(s => s.GradeCode == grade.Code, cancel))
            return Answer<string>.Invalid(new Problem("/kind", "Samples of this grade exist: what it is stays. Add a grade of its own for another product."));
        Apply(grade, wanted);
        context.Act = actor.Does("change grade");
        await context.SaveChangesAsync(cancel);
        await ReferenceChange.MarkAsync(context, $"the grade {grade.Code} was changed", clock.GetUtcNow(), cancel);
        await transaction.CommitAsync(cancel);
        return Answer<string>.Done(grade.Code);
    }

    private static Grade Apply(Grade grade, Grade wanted)
    {
        grade.Name = wanted.Name.Trim();
        grade.Kind = wanted.Kind;
        grade.State = wanted.State;
        grade.Tests = wanted.Tests;
        grade.Rule = wanted.Rule;
        grade.Confidence = wanted.Confidence;
        grade.ResultsInAll = wanted.ResultsInAll;
        grade.Tree = wanted.Tree;
        grade.Parties = wanted.Parties;
        grade.Active = wanted.Active;
        return grade;
    }
}
