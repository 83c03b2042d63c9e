using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>What waits at the bench, and by when.</summary>
public sealed partial class BenchPage : LabPage
{
    private BenchDay _day = new([], [], []);
    private IReadOnlyList<Problem> _problems = [];
    private string? _lead;
    private string? _said;
    private bool _busy;

    public override string Title => "Bench";

    public override IReadOnlyList<KeyHint> KeyHints =>
        [new("scan", "opens the sample's test, wherever the cursor is"), .. ListKeys.Hints];

    [Inject]
    private ReadBench Read { get; set; } = null!;

    [Inject]
    private TakeOnDetermination TakeOn { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.ChangesMeasurements() || notice.ChangesReadiness();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _day = await Read.Run(Actor.Id, cancellationToken);
        var first = _day.Waiting.FirstOrDefault(w => w.DueAt is not null);
        _lead = first is null
            ? null
            : $"{_day.Waiting.Count} {(_day.Waiting.Count == 1 ? "test waits" : "tests wait")}; the first is due {Clock.Text(first.DueAt!.Value)}, {SampleWords.Until(first.DueAt.Value, Clock.Now)}";
    }

    private void OpenAsync(ScannedSample found) => Addresses.NavigateTo(
        found.Waiting.Count > 0 && found.State == SampleState.Received
            ? BenchAddress.Of(found.Number, found.Waiting[0], found.Container)
            : $"/samples/{found.Number}");

    private async Task TakeOnAsync(WaitingForPerson determination)
    {
        if (_busy)
            return;
        _busy = true;
        var answer = await TakeOn.Run(await ActorNowAsync(), determination.Id, Leaving);
        _problems = answer.Problems;
        _said = answer.Ok ? $"You have taken on the determination of sample {determination.SampleNumber}: it counts now, and you are its operator." : null;
        await ReloadAsync();
        _busy = false;
    }
}
