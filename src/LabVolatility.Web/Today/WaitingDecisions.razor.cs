using LabVolatility.Laboratory.Today;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>The batches that wait for a decision: outcome, margin beside R, time to the slot against time to the last result.</summary>
public sealed partial class WaitingDecisions : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<WaitingBatch> Waiting { get; set; } = [];

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private static string? First(IReadOnlyList<string> blocks) => blocks.Count switch
    {
        0 => null,
        1 => blocks[0],
        var count => $"{blocks[0]} And {count - 1} more.",
    };

    private static bool IsTooLate(WaitingBatch wait) => (wait.LastResultExpected ?? wait.LastResultDue) > wait.Batch.NeededBy;

    private string Slot(WaitingBatch wait) => wait.Batch.NeededBy is { } needed
        ? SampleWords.Until(needed, Clock.Now)
        : "no slot";

    // By the methods' usual time here; where too little is known of it, by the deadline.
    private string LastResult(WaitingBatch wait)
    {
        var text = wait switch
        {
            { LastResultExpected: { } at } => at <= Clock.Now ? "any moment" : $"{SampleWords.Until(at, Clock.Now)} as usual",
            { LastResultDue: { } due } => $"due {SampleWords.Until(due, Clock.Now)}",
            _ => "nothing due",
        };
        return IsTooLate(wait) ? $"{text}, after the slot" : text;
    }
}
