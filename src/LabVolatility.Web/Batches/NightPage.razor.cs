using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>A batch for a telephone at night: outcome, margin, evidence one tap away; then sign, hold, or ask for more.</summary>
public sealed partial class NightPage : DecisionPage
{
    private static readonly IReadOnlyList<DecisionKind> Kinds = [DecisionKind.Release, DecisionKind.Concession, DecisionKind.Hold];

    private HandoverEntry? _asking;

    [Inject]
    private WriteHandover Write { get; set; } = null!;

    [Inject]
    private TakeHandover Take { get; set; } = null!;

    private string Lead(BatchSheet sheet) => string.Join(" · ", new[]
    {
        sheet.Evidence.GradeName,
        sheet.Batch.TankCode is { } tank ? $"tank {tank}" : null,
        sheet.Batch.NeededBy is { } needed ? $"needed {SampleWords.Until(needed, Clock.Now)}" : null,
    }.OfType<string>());

    private void BeginAsking() => _asking = new HandoverEntry { AskedOf = "the shift on duty" };

    private async Task AskAsync()
    {
        if (Busy || _asking is null)
            return;
        Busy = true;
        var note = _asking.Read(Clock)!;
        if (_asking.Problems.Count == 0)
        {
            var answer = await Write.Run(await ActorNowAsync(), new WriteHandover.Request(_asking.CommandId, Number, note), Leaving);
            _asking.Problems = answer.Problems;
            if (answer.Ok)
                (_asking, Said) = (null, "The shift is asked. Nothing is signed; the batch waits.");
            await ReloadAsync();
        }

        Busy = false;
    }

    private async Task TakeAsync(Guid note)
    {
        Problems = (await Take.Run(await ActorNowAsync(), note, Leaving)).Problems;
        await ReloadAsync();
    }
}
