using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Today;
using LabVolatility.Web.Batches;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>What waits for the person who is signed in.</summary>
public sealed partial class TodayPage : LabPage
{
    private TodaySheet? _sheet;

    public override string Title => "Today";

    [Inject]
    private ReadToday Read { get; set; } = null!;

    /// <summary>The first thing in a sentence: the next slot, or the next deadline.</summary>
    private string Lead
    {
        get
        {
            var slot = _sheet?.Waiting?.FirstOrDefault(w => w.Batch.NeededBy >= Clock.Now);
            if (slot is not null)
                return $"{BatchWords.Of(Clock.Today)}: batch {slot.Batch.Number} is needed {SampleWords.Until(slot.Batch.NeededBy!.Value, Clock.Now)}";
            var test = _sheet?.Bench?.Waiting.FirstOrDefault(t => t.DueAt is not null);
            return test is null ? BatchWords.Of(Clock.Today)
                : $"{BatchWords.Of(Clock.Today)}: the next bottle is due {SampleWords.Until(test.DueAt!.Value, Clock.Now)}";
        }
    }

    protected override bool Concerns(Notice notice) =>
        notice.ChangesMeasurements() || notice.ChangesBatches() || notice.ChangesReadiness() || notice.ChangesRules();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _sheet = await Read.Run(Actor, cancellationToken);
}
