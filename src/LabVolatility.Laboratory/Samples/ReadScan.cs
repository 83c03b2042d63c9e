using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Finds what a scan, or a number typed in its place, names. An unknown code makes nothing.</summary>
public sealed class ReadScan(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Answer<ScannedSample>> Run(string? text, CancellationToken cancel = default)
    {
        if (!ScanCode.TryParse(text, out var code))
            return Answer<ScannedSample>.Invalid(new Problem("/scan", Why(text)));
        await using var context = open();
        var sample = await context.Samples.AsNoTracking()
            .Include(s => s.Tests).Include(s => s.Containers).ThenInclude(c => c.Openings).AsSingleQuery()
            .FirstOrDefaultAsync(s => s.Number == code.SampleNumber, cancel);
        if (sample is null)
            return Answer<ScannedSample>.NotFound($"There is no sample {code.SampleNumber} in this laboratory.");
        if (code.ContainerNumber is { } asked && sample.Containers.All(c => c.Number != asked))
            return Answer<ScannedSample>.NotFound($"Sample {sample.Number} has no container {asked}.");
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        var waiting = sample.Tests.Where(t => t.State == TestState.Waiting).OrderBy(t => t.DueAt).Select(t => t.Method).ToList();
        var method = TestMethods.TryFind(waiting.FirstOrDefault(), out var first) ? first : null;
        var why = ContainerSheet.Of(sample, method, time.Day(clock.GetUtcNow()))
            .FirstOrDefault(c => c.Container.Number == code.ContainerNumber)?.WhyNot;
        return Answer<ScannedSample>.Done(new ScannedSample(sample.Number, sample.State, code.ContainerNumber, waiting, why));
    }

    private static string Why(string? text) => ScanCode.LooksLikeOurs(text)
        ? $"\"{text!.Trim()}\" is a label of ours that was misread: its check character doesn't fit. Scan it again."
        : $"\"{text?.Trim()}\" is no sample number. One looks like S2600417B, with its container like S2600417C011.";
}
