using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>How long each method takes at this laboratory from receipt to report: the median of its last determinations.</summary>
internal static class UsualTimes
{
    private const int Last = 200;
    private const int FewestForAMedian = 5;

    /// <returns>By method; one that was seldom measured is left out.</returns>
    public static async Task<IReadOnlyDictionary<string, TimeSpan>> LoadAsync(LabContext context, CancellationToken cancel)
    {
        // Ids are of version 7, which follow time.
        var rows = await context.Determinations.AsNoTracking().OrderByDescending(d => d.Id).Take(Last)
            .Join(context.Samples.Where(s => s.ReceivedAt != null), d => d.SampleId, s => s.Id, (d, s) => new { d.Method, d.RecordedAt, ReceivedAt = s.ReceivedAt!.Value })
            .ToListAsync(cancel);
        return rows.GroupBy(r => r.Method, r => r.RecordedAt - r.ReceivedAt).Where(g => g.Count() >= FewestForAMedian)
            .ToDictionary(g => g.Key, g => Median([.. g.Order()]));
    }

    private static TimeSpan Median(IReadOnlyList<TimeSpan> times) => (times[(times.Count - 1) / 2] + times[times.Count / 2]) / 2;
}
