using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>One sample with everything that happened to it.</summary>
public sealed partial class SamplePage : LabPage
{
    private SampleSheet? _sheet;
    private HandBlendSheet? _blends;
    private IReadOnlyList<Problem> _problems = [];
    private IReadOnlyList<Problem> _amendProblems = [];
    private Guid? _amending;
    private string? _said;
    private bool _receivedByOther;
    private bool _busy;

    public override string Title => $"Sample {Number}";

    [Parameter]
    public string Number { get; set; } = "";

    /// <summary>"yes" on the way from the form that made it.</summary>
    [SupplyParameterFromQuery(Name = "new")]
    private string? JustMade { get; set; }

    [Inject]
    private ReadSample Read { get; set; } = null!;

    [Inject]
    private ReadHandBlends ReadBlends { get; set; } = null!;

    [Inject]
    private RecordBlendContent RecordContent { get; set; } = null!;

    [Inject]
    private ReceiveSample Receive { get; set; } = null!;

    [Inject]
    private TakeOnDetermination TakeOn { get; set; } = null!;

    [Inject]
    private AmendDetermination Amend { get; set; } = null!;

    [Inject]
    private CancelTest Cancel { get; set; } = null!;

    protected override bool Concerns(Notice notice) =>
        _sheet?.Sample is { } sample
        && (notice.IsAbout<Sample>(sample.Id)
            || (notice.Changes<TankMovement>() && notice.IsAbout<Tank>(sample.TankCode))
            || (notice.Changes<Decision>() && notice.IsAbout<Batch>(sample.BatchId)));

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        var before = _sheet?.Sample;
        _sheet = await Read.Run(Number, cancellationToken);
        _blends = _sheet is null ? null : await ReadBlends.Run(Number, cancellationToken);
        if (_sheet is null)
            Missing = $"There is no sample {Number}.";
        if (_sheet?.Sample.Id != before?.Id)
            _receivedByOther = false;
        else if (before?.State == SampleState.Announced && _sheet!.Sample.State != SampleState.Announced && _sheet.Sample.ReceivedBy != Actor.Id)
            _receivedByOther = true;
    }

    private bool MayAmend(DeterminationState one) =>
        Actor.May(Right.AmendAfterDecision) || (!_sheet!.BatchDecided && one.MeasurerId == Actor.Id && Actor.May(Right.AmendBeforeDecision));

    private Task ReceiveAsync(ReceiveSample.Request request) =>
        ActAsync(async actor => Said(await Receive.Run(actor, request, Leaving), "Received: its tests wait at the bench now."));

    private Task EnterContentAsync(RecordBlendContent.Request request) =>
        ActAsync(async actor => Said(await RecordContent.Run(actor, request, Leaving), "The measured content is recorded; the latest counts."));

    private Task TakeOnAsync(DeterminationState one) =>
        ActAsync(async actor => Said(await TakeOn.Run(actor, one.Id, Leaving), "Taken on: it counts now, and you are its operator."));

    private Task CancelAsync((Guid Test, string? Reason) asked) =>
        ActAsync(async actor => Said(await Cancel.Run(actor, asked.Test, asked.Reason, Leaving), "The test is taken off; the batch no longer waits for it."));

    private Task AmendAsync(AmendDetermination.Request request) => ActAsync(async actor =>
    {
        var answer = await Amend.Run(actor, request, Leaving);
        (_amending, _amendProblems) = (request.Determination, answer.Problems);
        _said = answer.Ok ? "Amended: what was reported before stays readable with the reason." : null;
    });

    private async Task ActAsync(Func<Actor, Task> act)
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            await act(await ActorNowAsync());
            await ReloadAsync();
        }
        finally
        {
            _busy = false;
        }
    }

    private void Said<T>(Answer<T> answer, string words)
    {
        _problems = answer.Problems;
        _said = answer.Ok ? words : null;
    }
}
