using System.Globalization;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Makes the demo laboratory: twenty months of an invented refinery, by the same use cases that people work with.</summary>
/// <remarks>
/// All follows from the moment of the first start, which is kept. A day is committed as a whole with its mark: where
/// the making was broken off it goes on from the day after the last one that is there.
/// </remarks>
public sealed class DemoLaboratory(StorageOptions storage, TimeProvider clock, IPasswordHasher<Person> hasher)
{
    private const string Begun = "demo laboratory begun";
    private const string Made = "demo laboratory made";

    /// <summary>How many days of past it has.</summary>
    internal int Days { get; init; } = DemoDays.Whole;

    /// <summary>Makes it, or what is missing of it.</summary>
    /// <param name="progress">Told how many steps of how many are done.</param>
    /// <param name="cancel">Breaks it off; made again it goes on from there.</param>
    /// <exception cref="InvalidOperationException">The database holds a laboratory's own records, or a use case refused.</exception>
    public async Task MakeAsync(IProgress<(int Done, int Of)>? progress = null, CancellationToken cancel = default)
    {
        if (await BeginAsync(cancel) is not { } firstStart)
            return;
        var days = new DemoDays(firstStart, new LaboratoryTime(TimeZoneInfo.FindSystemTimeZoneById(MakeDemoPeople.TimeZone)), Days);
        var moved = new MovedClock(days.At(-1, 8));
        var open = LabStorage.Opener(storage.Engine, storage.Connection, moved);
        await new MakeSettings(open).Run(demo: true, cancel);
        await new MakeDemoPeople(open, moved, hasher).Run(cancel);

        await using var together = await ActsTogether.OpenAsync(storage, moved, cancel);
        var cast = await DemoCast.LoadAsync(open, together.Open, moved, cancel);
        var story = DemoStory.Of(cast, days);
        var finished = await FinishedAsync(cancel);
        var done = 0;
        foreach (var day in story.GroupBy(step => days.Of(step.At)))
        {
            if (finished.Contains(DemoName.Id(Part(day.Key))))
            {
                done += day.Count();
                progress?.Report((done, story.Count));
                continue;
            }

            await together.RunAsync(
                async () =>
                {
                    foreach (var step in day)
                    {
                        moved.MoveTo(step.At);
                        await step.Do(cancel);
                        progress?.Report((++done, story.Count));
                    }

                    await MarkAsync(together.Open, Part(day.Key), "", cancel);
                },
                cancel);
        }

        await MarkAsync(Open, Made, "", cancel);
    }

    private static string Part(DateOnly day) => string.Create(CultureInfo.InvariantCulture, $"demo laboratory day {day:yyyy-MM-dd}");

    /// <returns>The moment of the first start; null where all is made.</returns>
    private async Task<DateTimeOffset?> BeginAsync(CancellationToken cancel)
    {
        await using (var lab = Open())
        {
            if (await lab.Settings.AnyAsync(s => !s.IsDemo, cancel))
                throw new InvalidOperationException("This database holds a laboratory's own records: no demo is made in it.");
            var (begun, made) = (DemoName.Id(Begun), DemoName.Id(Made));
            if (await lab.Commands.AnyAsync(c => c.Id == made, cancel))
                return null;
            if (await lab.Commands.Where(c => c.Id == begun).Select(c => c.Subject).FirstOrDefaultAsync(cancel) is { } started)
                return DateTimeOffset.Parse(started, CultureInfo.InvariantCulture);
        }

        var now = DateTimeOffset.FromUnixTimeSeconds(clock.GetUtcNow().ToUnixTimeSeconds());
        await MarkAsync(Open, Begun, now.ToString("O", CultureInfo.InvariantCulture), cancel);
        return now;
    }

    private async Task<HashSet<Guid>> FinishedAsync(CancellationToken cancel)
    {
        await using var lab = Open();
        return await lab.Commands.Where(c => c.Name == Made).Select(c => c.Id).ToHashSetAsync(cancel);
    }

    private async Task MarkAsync(Func<LabContext> open, string name, string subject, CancellationToken cancel)
    {
        await using var lab = open();
        lab.Commands.Add(new PerformedCommand { Id = DemoName.Id(name), Name = Made, Subject = subject, At = clock.GetUtcNow() });
        await lab.SaveChangesAsync(cancel);
    }

    private LabContext Open() => LabStorage.Opener(storage.Engine, storage.Connection, clock)();
}
