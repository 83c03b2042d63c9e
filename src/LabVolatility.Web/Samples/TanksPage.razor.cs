using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Tanks, their last movements, and a form to record one.</summary>
public sealed partial class TanksPage : LabPage
{
    private IReadOnlyList<TankSheet> _tanks = [];
    private IReadOnlyList<Problem> _problems = [];
    private Guid _command = Guid.NewGuid();
    private string? _tank;
    private MovementKind _kind;
    private string? _at;
    private string? _volume;
    private string? _note;
    private string? _said;
    private bool _busy;

    public override string Title => "Tanks and movements";

    [Inject]
    private ReadTanks Read { get; set; } = null!;

    [Inject]
    private RecordMovement Record { get; set; } = null!;

    private bool MayRecord => Actor.May(Right.RegisterSamples) || Actor.May(Right.ManageBatches);

    /// <summary>What the movement would void, as far as its time can be read; all that stands where it can't.</summary>
    private IReadOnlyList<StandingSample> Voids => _kind == MovementKind.Delivery
        ? []
        : [.. (_tanks.FirstOrDefault(t => t.Tank.Code == _tank)?.Standing ?? []).Where(s => !Clock.TryRead(_at, out var at, out _) || s.SampledAt < at)];

    protected override bool Concerns(Notice notice) => notice.Changes<Tank>() || notice.Changes<TankMovement>() || notice.Changes<Sample>();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _tanks = await Read.Run(cancellationToken);
        _tank ??= _tanks.Count > 0 ? _tanks[0].Tank.Code : null;
    }

    private async Task RecordAsync()
    {
        if (_busy)
            return;
        _busy = true;
        var problems = new List<Problem>();
        if (!Clock.TryRead(_at, out var at, out var wrong))
            problems.Add(new Problem("/at", wrong!));
        decimal? volume = null;
        if (!string.IsNullOrWhiteSpace(_volume))
        {
            if (QuantityText.TryReadNumber(_volume, 0m, 1_000_000m, out var read, out var unread))
                volume = read;
            else
                problems.Add(new Problem("/cubicMetres", unread!));
        }

        if (problems.Count == 0)
        {
            var voided = Voids.Select(v => v.Number).ToList();
            var answer = await Record.Run(await ActorNowAsync(), new RecordMovement.Request(_command, _tank ?? "", _kind, at, volume, _note), Leaving);
            problems.AddRange(answer.Problems);
            if (answer.Ok)
            {
                _said = $"Recorded: {MovementVoidsSample.Word(_kind)} in {_tank}."
                    + (voided.Count > 0 ? $" Void for a decision now: {string.Join(", ", voided)}." : " No sample is voided.");
                (_command, _at, _volume, _note) = (Guid.NewGuid(), null, null, null);
                await ReloadAsync();
            }
        }

        _problems = problems;
        _busy = false;
    }
}
