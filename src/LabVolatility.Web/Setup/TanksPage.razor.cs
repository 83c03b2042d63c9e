using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The tanks: list, add, change.</summary>
public sealed partial class TanksPage : LabPage
{
    private const decimal LargestCubicMetres = 1_000_000m;

    private SamplingPlaces _places = new([], [], []);
    private IReadOnlyList<Problem> _problems = [];
    private string? _code;
    private string? _name;
    private string? _grade;
    private string? _capacity;
    private Guid? _version;
    private string? _done;
    private bool _busy;

    public override string Title => "Setup: tanks";

    [Inject]
    private ReadSamplingPlaces Read { get; set; } = null!;

    [Inject]
    private KeepTank Keep { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.Changes<Tank>() || notice.Changes<Grade>();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _places = await Read.Run(cancellationToken);

    private void Edit(Tank tank)
    {
        (_code, _name, _grade, _version) = (tank.Code, tank.Name, tank.GradeCode, tank.Version);
        _capacity = tank.CapacityCubicMetres is { } capacity ? Rounding.Plain(capacity) : null;
        (_problems, _done) = ([], null);
    }

    private void Clear()
    {
        (_code, _name, _grade, _capacity, _version) = (null, null, null, null, null);
        _problems = [];
    }

    private async Task SaveAsync()
    {
        if (_busy)
            return;
        _busy = true;
        _done = null;
        try
        {
            if (Wanted() is not { } tank)
                return;
            var actor = await ActorNowAsync();
            var answer = _version is { } version ? await Keep.Change(actor, version, tank, Leaving) : await Keep.Add(actor, tank, Leaving);
            _problems = answer.Problems;
            if (answer.Kind == AnswerKind.Conflict && _version is not null)
                await SeeAnewAsync(tank.Code);
            if (!answer.Ok)
                return;
            _done = $"{tank.Code} is saved.";
            Clear();
            await ReloadAsync();
        }
        finally
        {
            _busy = false;
        }
    }

    // What the other person saved has been told: saving once more is deliberate.
    private async Task SeeAnewAsync(string code)
    {
        await ReloadAsync();
        _version = _places.Tanks.First(t => t.Code == code).Version;
        _problems = [.. _problems, new Problem("", "Save again to put what you typed in its place.")];
    }

    private Tank? Wanted()
    {
        var capacity = default(decimal?);
        if (!string.IsNullOrWhiteSpace(_capacity))
        {
            if (!QuantityText.TryReadNumber(_capacity, 0m, LargestCubicMetres, out var typed, out var problem))
            {
                _problems = [new Problem("/capacity", problem!)];
                return null;
            }

            capacity = typed;
        }

        return new Tank
        {
            Code = (_code ?? "").Trim(),
            Name = _name ?? "",
            GradeCode = string.IsNullOrEmpty(_grade) ? null : _grade,
            CapacityCubicMetres = capacity,
        };
    }
}
