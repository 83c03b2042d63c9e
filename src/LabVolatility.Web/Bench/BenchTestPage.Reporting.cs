using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <content>Keeps the draft, and reports.</content>
public sealed partial class BenchTestPage
{
    private readonly SemaphoreSlim _saving = new(1, 1);
    private BenchEntry? _lastSaved;
    private DraftState _draft;
    private DateTimeOffset? _savedAt;
    private string? _notSaved;

    [Inject]
    private SaveDraft Drafts { get; set; } = null!;

    // One save at a time; what was typed meanwhile goes with the next one.
    private async Task SaveAsync()
    {
        if (_entry == _lastSaved && _draft != DraftState.NotSaved)
            return;
        _draft = DraftState.Saving;
        StateHasChanged();
        await _saving.WaitAsync(Leaving);
        try
        {
            while (_reported is null && (_entry != _lastSaved || _draft == DraftState.NotSaved))
            {
                var entry = _entry;
                var answer = await Drafts.Run(await ActorNowAsync(), _test!.Test.Id, entry, Leaving);
                _notSaved = answer.Ok ? null : answer.Text;
                _draft = answer.Ok ? DraftState.Saved : DraftState.NotSaved;
                if (!answer.Ok)
                    return;
                (_savedAt, _lastSaved) = (answer.Value, entry);
            }

            if (_draft == DraftState.Saving)
                _draft = DraftState.Saved;
        }
        finally
        {
            _saving.Release();
        }
    }

    private async Task<bool> SavedAsync()
    {
        if (_test is null)
            return false;
        if (ShowsForm)
            await SaveAsync();
        return _draft != DraftState.NotSaved;
    }

    private async Task ReportAsync()
    {
        if (_busy || !ShowsForm)
            return;
        _busy = true;
        StateHasChanged();
        try
        {
            var preview = BenchPreview.Of(_test!, _entry);
            var problems = Unreadable(preview);
            var answer = problems.Count > 0 ? null : await Reports.Run(await ActorNowAsync(), Request(preview), Leaving);
            _problems = answer?.Problems ?? problems;
            if (answer is { Ok: true, Value: { } reported })
            {
                _reported = reported;
                _draft = DraftState.None;
                if (_keys is not null)
                    await _keys.ReportedAsync();
                await ReloadAsync();
            }
        }
        finally
        {
            _busy = false;
        }
    }

    private List<Problem> Unreadable(BenchPreview preview)
    {
        var problems = preview.Problems.ToList();
        if (_entry.ContainerNumber is null)
            problems.Insert(0, new Problem("/containerNumber", "Scan or pick the container that you opened."));
        if (string.IsNullOrWhiteSpace(_entry.Instrument))
            problems.Add(new Problem("/instrument", "Pick the instrument."));
        return problems;
    }

    private DeterminationRequest Request(BenchPreview preview) => new()
    {
        CommandId = _command,
        SampleNumber = _test!.Sample.Number,
        Method = _test.Method.Designation,
        ContainerNumber = _entry.ContainerNumber!.Value,
        Instrument = _entry.Instrument,
        MeasuredBy = _test.UserName,
        Readings = preview.Readings,
        Handling = preview.Handling,
    };
}
