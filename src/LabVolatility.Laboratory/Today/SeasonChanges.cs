using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Today;

/// <summary>Finds the next change of limits for the destinations of the newest batches.</summary>
internal static class SeasonChanges
{
    private const int NewestBatches = 60;
    private const int DaysAhead = 366;

    public static async Task<IReadOnlyList<SeasonChange>> LoadAsync(LabContext context, DateTimeOffset now, CancellationToken cancel)
    {
        var today = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel)).Day(now);
        var newest = await context.Batches.AsNoTracking().OrderByDescending(b => b.CreatedAt).Take(NewestBatches)
            .Join(context.Grades, b => b.GradeCode, g => g.Code, (b, g) => new { b.CreatedAt, b.State, b.Destinations, Grade = g }).ToListAsync(cancel);
        var areas = await LimitCatalogue.LoadAsync(context, cancel);
        List<SeasonChange> changes = [.. newest.OrderByDescending(b => b.CreatedAt)
            .SelectMany(b => b.Destinations, (b, to) => (b.Grade, b.State, To: to)).DistinctBy(x => x.To)
            .Select(x => Next(areas, x.Grade, x.State, x.To, today)).OfType<SeasonChange>().OrderBy(c => c.On).ThenBy(c => c.Area, StringComparer.Ordinal)];
        var tanks = await TankStandings.LoadAsync(context, changes, now, cancel);
        return [.. changes.Select(c => c with { Tanks = [.. tanks[new Destination(c.Area, c.Point)]] })];
    }

    /// <summary>The first day within a year on which other limits hold; null where none is known.</summary>
    private static SeasonChange? Next(IReadOnlyList<Area> areas, Grade grade, ProductState state, Destination to, DateOnly today)
    {
        var year = Year(areas, grade, state, to, today);
        return year.Count > 1 ? new SeasonChange(to.Area, to.Point, grade.Code, year[1].From.DayNumber - today.DayNumber, year) : null;
    }

    private static List<SeasonPeriod> Year(IReadOnlyList<Area> areas, Grade grade, ProductState state, Destination to, DateOnly today)
    {
        var year = new List<SeasonPeriod>();
        var (from, limits) = (today, Words(areas, grade, state, to, today));
        foreach (var day in Edges(areas, to.Area, today))
        {
            var next = Words(areas, grade, state, to, day);
            if (next == limits)
                continue;
            year.Add(new SeasonPeriod(from, day.AddDays(-1), limits));
            (from, limits) = (day, next);
        }

        year.Add(new SeasonPeriod(from, today.AddDays(DaysAhead), limits));
        return year;
    }

    // Limits change only where a window, a version or a limit begins, or on the day after it ends.
    private static IEnumerable<DateOnly> Edges(IReadOnlyList<Area> areas, string code, DateOnly today)
    {
        var own = areas.Where(a => a.Code == code).ToList();
        var named = own.SelectMany(a => a.Calendar).Select(w => w.Class).ToHashSet();
        var all = own.Concat(areas.Where(a => named.Contains(a.Code))).ToList();
        var windows = all.SelectMany(a => a.Calendar)
            .SelectMany(w => new[] { today.Year, today.Year + 1 }.SelectMany(year => new[] { w.From.In(year), w.Until.In(year).AddDays(1) }));
        var versions = all.SelectMany(a => new[] { a.EffectiveFrom, a.EffectiveUntil?.AddDays(1) });
        var limits = all.SelectMany(a => a.Limits).SelectMany(l => new[] { l.Limit.EffectiveFrom, l.Limit.EffectiveUntil?.AddDays(1) });
        return windows.Concat(versions.Concat(limits).OfType<DateOnly>())
            .Where(day => day > today && day <= today.AddDays(DaysAhead)).Distinct().Order();
    }

    private static string Words(IReadOnlyList<Area> areas, Grade grade, ProductState state, Destination to, DateOnly day)
    {
        var pick = LimitPicker.Pick(areas, new ProductQuery(grade.Code, state, to.Area, to.Point, day, null, grade.Kind));
        var words = pick.Limits.OrderBy(l => l.Limit.Quantity, StringComparer.Ordinal).ThenBy(l => l.Limit.Key, StringComparer.Ordinal).Select(Words).Distinct().ToList();
        return words.Count == 0 ? "no limit" : string.Join("; ", words);
    }

    private static string Words(PickedLimit picked)
    {
        var limit = picked.Limit;
        string?[] edges =
        [
            picked.EffectiveMinimum is { } min ? $"min {Rounding.Text(min, limit.Digits)}" : null,
            picked.EffectiveMaximum is { } max ? $"max {Rounding.Text(max, limit.Digits)}" : null,
        ];
        return $"{limit.Quantity} {string.Join(", ", edges.OfType<string>())} {limit.Unit}";
    }
}
