using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>One test of one sample on one screen: container, handling, instrument, readings, report.</summary>
public sealed partial class BenchTestPage : LabPage
{
    private BenchTest? _test;
    private BenchEntry _entry = new();
    private BenchPreview? _preview;
    private ReportedDetermination? _reported;
    private IReadOnlyList<Problem> _problems = [];
    private ElementReference _root;
    private ScanBox? _scan;
    private BenchKeys? _keys;
    private Guid _command = Guid.NewGuid();
    private string? _address;
    private bool _busy;
    private bool _oncemore;
    private bool _doneMeanwhile;
    private bool _toBegin;

    public override string Title => $"{Number} · {BenchAddress.Method(MethodPart)}";

    public override IReadOnlyList<KeyHint> KeyHints =>
    [
        new("Enter, ↓", "on to the next field"),
        new("Shift+Enter, ↑", "back to the field before"),
        new("Escape", "what stood in the field before; once more: back"),
        new("F2", "change what stands in the field; typing replaces it"),
        new("1, 2, 3 …", "pick that line of a choice"),
        new("Space", "confirm a step"),
        new("Ctrl+Enter", "report the determination"),
        new("scan", "picks the bottle or the instrument, or opens another sample's test"),
    ];

    [Parameter]
    public string Number { get; set; } = "";

    [Parameter]
    public string MethodPart { get; set; } = "";

    /// <summary>A container that was scanned on the way here.</summary>
    [SupplyParameterFromQuery(Name = "container")]
    private int? Scanned { get; set; }

    [Inject]
    private ReadBenchTest Read { get; set; } = null!;

    [Inject]
    private ReportDetermination Reports { get; set; } = null!;

    [Inject]
    private Microsoft.JSInterop.IJSRuntime Js { get; set; } = null!;

    private bool ShowsForm => _test is not null && _reported is null && Actor.May(Right.Determine)
        && _test.Sample.State == SampleState.Received && (_test.Test.State == TestState.Waiting || _oncemore);

    private string Standing => _test!.Sample.State switch
    {
        SampleState.Announced => $"Sample {Number} is announced, not received yet: receive it first.",
        SampleState.Refused => $"Sample {Number} was refused at receipt: it is not measured.",
        _ => "This test is done. Another result follows from a step of the grade's tree, which the shift chemist takes on the batch, or once one was set aside for an assignable cause.",
    };

    protected override bool Concerns(Notice notice) =>
        _test?.Sample is { } sample
        && (notice.IsAbout<Sample>(sample.Id) || notice.ChangesReadiness() || notice.ChangesRules()
            || (notice.Changes<TankMovement>() && notice.IsAbout<Tank>(sample.TankCode)));

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        if (_address != $"{Number}/{MethodPart}")
            _reported = null;
        var typing = ShowsForm && _draft != DraftState.None;
        _test = await Read.Run(Actor.Id, Number, BenchAddress.Method(MethodPart), _reported is not null, cancellationToken);
        if (_test is null)
        {
            Missing = $"Sample {Number} has no test by {BenchAddress.Method(MethodPart)}.";
            return;
        }

        var here = $"{Number}/{MethodPart}";
        if (_address != here)
        {
            _address = here;
            Begin(_test.Draft ?? new BenchEntry(), _test.DraftAt);
            if (Scanned is { } container && _entry.ContainerNumber is null)
                Pick(container);
        }
        else if (typing && !ShowsForm)
        {
            // A colleague's result completed the test meanwhile: what is being typed is not taken away.
            _oncemore = _doneMeanwhile = true;
        }

        _preview = BenchPreview.Of(_test, _entry);
    }

    // For every test anew: the form may have been taken away while the page was reading.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_toBegin || !Ready || !ShowsForm || !RendererInfo.IsInteractive)
            return;
        _toBegin = false;
        var goesOn = _keys is not null;
        _keys ??= new BenchKeys(Js, SavedAsync);
        await _keys.AttachAsync(_root, goesOn);
    }

    protected override void Leave() => _keys?.Dispose();

    private static string Facts(BenchTest test) =>
        string.Join(" · ", new[]
        {
            test.Sample.GradeCode, test.Batch is null ? null : $"batch {test.Batch}", test.Sample.TankCode ?? test.Sample.SamplePointCode, SampleWords.Of(test.Sample.Level),
            $"{test.Made.Count} of {test.Test.Wanted} made",
        }.OfType<string>());

    private void Begin(BenchEntry entry, DateTimeOffset? savedAt)
    {
        _entry = entry;
        _lastSaved = entry;
        _savedAt = savedAt;
        _draft = savedAt is null ? DraftState.None : DraftState.Saved;
        _command = Guid.NewGuid();
        _reported = null;
        _oncemore = _doneMeanwhile = false;
        _toBegin = true;
        _problems = [];
    }

    private void Pick(int container)
    {
        if (_test!.Containers.Any(c => c.Container.Number == container && c.WhyNot is null))
            _entry = _entry with { ContainerNumber = container };
    }

    private async Task TakeAsync(Func<BenchEntry, BenchEntry> change)
    {
        _entry = change(_entry);
        _preview = BenchPreview.Of(_test!, _entry);
        StateHasChanged();
        await SaveAsync();
    }

    private async Task ScannedAsync(ScannedSample found)
    {
        if (found.Number != Number)
        {
            Addresses.NavigateTo(found.Waiting.Count > 0 && found.State == SampleState.Received
                ? BenchAddress.Of(found.Number, found.Waiting[0], found.Container)
                : $"/samples/{found.Number}");
            return;
        }

        if (found.Container is not { } container || !ShowsForm)
            return;
        var why = _test!.Containers.First(c => c.Container.Number == container).WhyNot;
        _problems = why is null ? [] : [new Problem("/containerNumber", why)];
        if (why is null)
            await PickAsync(e => e with { ContainerNumber = container }, "container");
    }

    private async Task<ScanSaid?> InstrumentAsync(string code)
    {
        if (!ShowsForm || _test!.Instruments.FirstOrDefault(i => InstrumentLabel.Names(code, i.Instrument.Code)) is not { } line)
            return null;
        if (!line.Readiness.Ready)
            return new ScanSaid(ScanVerdict.WrongPlace, $"{line.Instrument.Code} is not ready. {string.Join(" ", line.Readiness.Reasons)}");
        await PickAsync(e => e with { Instrument = line.Instrument.Code }, "instrument");
        return new ScanSaid(ScanVerdict.Found, $"instrument {line.Instrument.Code}.");
    }

    // The hands are at the scanner: the focus goes on to what is to be answered next.
    private async Task PickAsync(Func<BenchEntry, BenchEntry> change, string choice)
    {
        await TakeAsync(change);
        if (_keys is not null)
            await _keys.GoOnAsync(choice);
    }

    private Task MisplacedAsync(string label) => _scan?.Scanned(label) ?? Task.CompletedTask;

    private async Task AgainAsync()
    {
        var instrument = _entry.Instrument;
        await ReloadAsync();
        Begin(new BenchEntry { Instrument = instrument }, null);
        _oncemore = true;
        _preview = BenchPreview.Of(_test!, _entry);
    }
}
