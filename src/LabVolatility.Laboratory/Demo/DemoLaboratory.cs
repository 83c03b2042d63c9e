using System.Globalization;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Makes the demo laboratory: sixty days of an invented refinery, by the same use cases that people work with.</summary>
/// <remarks>
/// All follows from the moment of the first start, which is kept. Where it was broken off it goes on from the last
/// finished part; a step of an unfinished part that was done already is told so and changes nothing.
/// </remarks>
public sealed class DemoLaboratory(StorageOptions storage, TimeProvider clock, IPasswordHasher<Person> hasher)
{
    private const string Begun = "demo laboratory begun";
    private const string Made = "demo laboratory made";
    private const int StepsAPart = 12;

    /// <summary>Makes it, or what is missing of it.</summary>
    /// <param name="progress">Told how many steps of how many are done.</param>
    /// <param name="cancel">Breaks it off; made again it goes on from there.</param>
    /// <exception cref="InvalidOperationException">The database holds a laboratory's own records, or a use case refused.</exception>
    public async Task MakeAsync(IProgress<(int Done, int Of)>? progress = null, CancellationToken cancel = default)
    {
        var now = await BeginAsync(cancel);
        if (now is not { } firstStart)
            return;
        var days = new DemoDays(firstStart, new LaboratoryTime(TimeZoneInfo.FindSystemTimeZoneById(MakeDemoPeople.TimeZone)));
        var moved = new MovedClock(days.At(-1, 8));
        var open = LabStorage.Opener(storage.Engine, storage.Connection, moved);
        await new MakeSettings(open).Run(demo: true, cancel);
        await new MakeDemoPeople(open, moved, hasher).Run(cancel);

        var cast = await DemoCast.LoadAsync(open, moved, cancel);
        var story = DemoStory.Of(cast, days);
        var finished = await FinishedAsync(cancel);
        var done = 0;
        foreach (var (part, steps) in story.Chunk(StepsAPart).Index())
        {
            if (!finished.Contains(DemoName.Id(Part(part))))
            {
                foreach (var step in steps)
                {
                    moved.MoveTo(step.At);
                    await step.Do(cancel);
                    progress?.Report((++done, story.Count));
                }

                await MarkAsync(Part(part), "", cancel);
                continue;
            }

            done += steps.Length;
            progress?.Report((done, story.Count));
        }

        await MarkAsync(Made, "", cancel);
    }

    private static string Part(int number) => string.Create(CultureInfo.InvariantCulture, $"demo laboratory part {number}");

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
        await MarkAsync(Begun, now.ToString("O", CultureInfo.InvariantCulture), cancel);
        return now;
    }

    private async Task<HashSet<Guid>> FinishedAsync(CancellationToken cancel)
    {
        await using var lab = Open();
        return await lab.Commands.Where(c => c.Name == Made).Select(c => c.Id).ToHashSetAsync(cancel);
    }

    private async Task MarkAsync(string name, string subject, CancellationToken cancel)
    {
        await using var lab = Open();
        lab.Commands.Add(new PerformedCommand { Id = DemoName.Id(name), Name = Made, Subject = subject, At = clock.GetUtcNow() });
        await lab.SaveChangesAsync(cancel);
    }

    private LabContext Open() => LabStorage.Opener(storage.Engine, storage.Connection, clock)();
}
