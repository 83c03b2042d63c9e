using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Reads the tanks with their last movements and the samples that still speak for them.</summary>
public sealed class ReadTanks(Func<LabContext> open, TimeProvider clock)
{
    private const int Shown = 5;
    private static readonly TimeSpan Back = TimeSpan.FromDays(90);

    public async Task<IReadOnlyList<TankSheet>> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        var since = clock.GetUtcNow() - Back;
        var tanks = await context.Tanks.AsNoTracking().OrderBy(t => t.Code).ToListAsync(cancel);
        var movements = await context.TankMovements.AsNoTracking().Where(m => m.At > since)
            .OrderByDescending(m => m.At).ThenByDescending(m => m.Id).ToListAsync(cancel);
        var samples = await context.Samples.AsNoTracking()
            .Where(s => s.TankCode != null && s.SampledAt > since && s.State == SampleState.Received)
            .OrderByDescending(s => s.SampledAt)
            .Select(s => new
            {
                Tank = s.TankCode!,
                Sample = new StandingSample(
                    s.Number, context.Batches.Where(b => b.Id == s.BatchId).Select(b => b.Number).FirstOrDefault(), s.SampledAt),
            })
            .ToListAsync(cancel);
        return [.. tanks.Select(tank =>
        {
            var own = movements.Where(m => m.TankCode == tank.Code).ToList();
            var changed = own.FirstOrDefault(m => m.ChangesContents)?.At;
            return new TankSheet(
                tank, [.. own.Take(Shown)],
                [.. samples.Where(s => s.Tank == tank.Code && !(s.Sample.SampledAt < changed)).Select(s => s.Sample)], changed);
        })];
    }
}
