using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>What a cargo certificate can be made of: shore tanks, and batches whose release is in force.</summary>
public sealed class ReadCargoBatches(Func<LabContext> open)
{
    private const int Most = 200;

    /// <param name="Number">Of the batch.</param>
    /// <param name="Tank">The batch's own tank, or null.</param>
    /// <param name="Grade">Name of the grade.</param>
    /// <param name="ReleasedAt">When its release was signed.</param>
    public sealed record Choice(string Number, string? Tank, string Grade, DateTimeOffset ReleasedAt);

    /// <param name="Tanks">Codes of all tanks.</param>
    /// <param name="Batches">The batch released last on top.</param>
    public sealed record Choices(IReadOnlyList<string> Tanks, IReadOnlyList<Choice> Batches);

    /// <summary>The batches as a certificate would state them now, in the order asked for; unknown numbers are left out.</summary>
    public async Task<IReadOnlyList<CargoBatch>> Run(IReadOnlyList<string> numbers, CancellationToken cancel = default)
    {
        await using var context = open();
        var batches = await CargoBatches.LoadAsync(context, numbers, cancel);
        return [.. numbers.Distinct().Select(n => batches.GetValueOrDefault(n)).OfType<CargoBatch>()];
    }

    public async Task<Choices> Offered(CancellationToken cancel = default)
    {
        await using var context = open();
        var tanks = await context.Tanks.OrderBy(t => t.Code).Select(t => t.Code).ToListAsync(cancel);
        var batches = await context.Decisions.AsNoTracking()
            .Where(d => (d.Kind == DecisionKind.Release || d.Kind == DecisionKind.Concession)
                && !context.Decisions.Any(l => l.BatchId == d.BatchId && l.Sequence > d.Sequence)
                && !context.ReviewMarks.Any(m => m.DecisionId == d.Id))
            .OrderByDescending(d => d.At).Take(Most)
            .Join(context.Batches, d => d.BatchId, b => b.Id, (d, b) => new { d.At, Batch = b })
            .Join(context.Grades, x => x.Batch.GradeCode, g => g.Code, (x, g) => new { x.Batch.Number, x.Batch.TankCode, g.Name, x.At })
            .ToListAsync(cancel);
        return new Choices(tanks, [.. batches.OrderByDescending(b => b.At).Select(b => new Choice(b.Number, b.TankCode, b.Name, b.At))]);
    }
}
