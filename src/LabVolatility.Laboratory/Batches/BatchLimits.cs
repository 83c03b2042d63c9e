using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Picks the limits of every destination on every day of use, and says where they clash.</summary>
internal static class BatchLimits
{
    private const int LongestPeriodDays = 400;

    /// <param name="Limits">Each limit once per effective edges and destination, with the days it holds.</param>
    /// <param name="Remarks">Days and places without a limit; edges that leave nothing.</param>
    /// <param name="Incomplete">An area isn't known any more, so the limits can't be picked.</param>
    public sealed record Picked(IReadOnlyList<(PickedLimit Limit, Destination To, string Days)> Limits, IReadOnlyList<string> Remarks, bool Incomplete);

    /// <param name="areas">Those that are known.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="grade">Its grade.</param>
    /// <param name="blend">The hand blend that is judged; null: the batch as it is.</param>
    public static Picked Pick(IReadOnlyList<Area> areas, Batch batch, Grade grade, HandBlendEvidence? blend = null)
    {
        var state = blend is null ? batch.State : ProductState.HandBlend;
        var ethanol = blend is not null ? blend.EthanolPercent : batch.EthanolMethod is null ? null : batch.EthanolPercent;
        var found = new Dictionary<(string Key, decimal? Min, decimal? Max, Destination To), (PickedLimit Limit, List<DateOnly> Days)>();
        var remarks = new List<string>();
        var incomplete = batch.Destinations.Count == 0;
        foreach (var to in batch.Destinations)
        {
            if (areas.All(a => a.Code != to.Area))
            {
                remarks.Add($"There is no approved area {to.Area}: its limits can't be picked.");
                incomplete = true;
                continue;
            }

            var without = new List<DateOnly>();
            foreach (var day in Days(batch))
            {
                var pick = LimitPicker.Pick(areas, new ProductQuery(
                    grade.Code, state, to.Area, to.Point, day, ethanol, grade.Kind));
                if (pick.Limits.Count == 0)
                    without.Add(day);
                foreach (var limit in pick.Limits)
                {
                    var key = (limit.Limit.Key, limit.EffectiveMinimum, limit.EffectiveMaximum, to);
                    if (!found.TryGetValue(key, out var known))
                        found[key] = known = (limit, []);
                    known.Days.Add(day);
                }
            }

            if (without.Count > 0)
                remarks.Add($"{to.Area}, {to.Point.Text()}: no limit is in force {Spans(without)}.");
        }

        remarks.AddRange(Strictest.Of([.. found.Values.Select(f => f.Limit)]).Where(s => s.IsEmpty).Select(s => s.Why));
        return new Picked([.. found.Select(f => (f.Value.Limit, f.Key.To, Spans(f.Value.Days)))], remarks, incomplete);
    }

    private static IEnumerable<DateOnly> Days(Batch batch)
    {
        var last = batch.Until < batch.From ? batch.From : batch.Until;
        for (var day = batch.From; day <= last && day <= batch.From.AddDays(LongestPeriodDays); day = day.AddDays(1))
            yield return day;
    }

    // Unbroken runs of days, each by its ends.
    private static string Spans(List<DateOnly> days)
    {
        var starts = days.Where((day, i) => i == 0 || days[i - 1].AddDays(1) != day);
        var ends = days.Where((day, i) => i == days.Count - 1 || day.AddDays(1) != days[i + 1]);
        return string.Join(" and ", starts.Zip(ends, Span));
    }

    private static string Span(DateOnly first, DateOnly last) =>
        first == last ? $"on {first:yyyy-MM-dd}" : $"from {first:yyyy-MM-dd} until {last:yyyy-MM-dd}";
}
