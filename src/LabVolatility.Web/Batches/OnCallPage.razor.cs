using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>Who can be called to sign, kept by who decides on batches.</summary>
public sealed partial class OnCallPage : LabPage
{
    private ReadOnCall.List _list = new([], []);
    private IReadOnlyList<Problem> _problems = [];
    private string? _person;
    private string? _phone;
    private string? _from;
    private string? _until;
    private bool _busy;

    public override string Title => "On call";

    [Inject]
    private ReadOnCall Read { get; set; } = null!;

    [Inject]
    private KeepOnCall Keep { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.Changes<OnCallTurn>();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _list = await Read.Run(cancellationToken);

    private async Task AddAsync()
    {
        if (_busy)
            return;
        _busy = true;
        var unread = new List<Problem>();
        var turn = new KeepOnCall.Turn(
            Guid.TryParse(_person, out var person) ? person : Guid.Empty, _phone, InstantOf(_from, "/from", unread), InstantOf(_until, "/until", unread));
        if (unread.Count > 0)
        {
            _problems = unread;
        }
        else
        {
            var answer = await Keep.Add(await ActorNowAsync(), turn, Leaving);
            _problems = answer.Problems;
            if (answer.Ok)
                (_person, _phone, _from, _until) = (null, null, null, null);
            await ReloadAsync();
        }

        _busy = false;
    }

    private async Task EndAsync(Guid turn)
    {
        if (_busy)
            return;
        _busy = true;
        _problems = (await Keep.End(await ActorNowAsync(), turn, Leaving)).Problems;
        await ReloadAsync();
        _busy = false;
    }

    private DateTimeOffset? InstantOf(string? typed, string field, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return null;
        if (Clock.TryRead(typed, out var at, out var problem))
            return at;
        problems.Add(new Problem(field, problem!));
        return null;
    }
}
