using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The sample points: list, add, change.</summary>
public sealed partial class SamplePointsPage : LabPage
{
    private SamplingPlaces _places = new([], [], []);
    private IReadOnlyList<Problem> _problems = [];
    private string? _code;
    private string? _name;
    private string? _tank;
    private SamplePoint? _seen;
    private string? _done;
    private bool _busy;

    public override string Title => "Setup: sample points";

    [Inject]
    private ReadSamplingPlaces Read { get; set; } = null!;

    [Inject]
    private KeepSamplePoint Keep { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.Changes<SamplePoint>() || notice.Changes<Tank>();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _places = await Read.Run(cancellationToken);

    private void Edit(SamplePoint point)
    {
        (_code, _name, _tank, _seen) = (point.Code, point.Name, point.TankCode, point);
        (_problems, _done) = ([], null);
    }

    private void Clear()
    {
        (_code, _name, _tank, _seen) = (null, null, null, null);
        _problems = [];
    }

    // What the other person saved has been told: saving once more is deliberate.
    private async Task SeeAnewAsync(string code)
    {
        await ReloadAsync();
        _seen = _places.Points.First(p => p.Code == code);
        _problems = [.. _problems, new Problem("", "Save again to put what you typed in its place.")];
    }

    private async Task SaveAsync()
    {
        if (_busy)
            return;
        _busy = true;
        _done = null;
        try
        {
            var point = new SamplePoint { Code = (_code ?? "").Trim(), Name = _name ?? "", TankCode = string.IsNullOrEmpty(_tank) ? null : _tank };
            var actor = await ActorNowAsync();
            var answer = _seen is { } seen ? await Keep.Change(actor, seen, point, Leaving) : await Keep.Add(actor, point, Leaving);
            _problems = answer.Problems;
            if (answer.Kind == AnswerKind.Conflict && _seen is not null)
                await SeeAnewAsync(point.Code);
            if (!answer.Ok)
                return;
            _done = $"{point.Code} is saved.";
            Clear();
            await ReloadAsync();
        }
        finally
        {
            _busy = false;
        }
    }
}
