using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>All accounts, and the form that opens one.</summary>
public sealed partial class PeoplePage
{
    private IReadOnlyList<PersonLine> _people = [];
    private IReadOnlyList<Problem> _problems = [];
    private PersonAdded? _handedOut;
    private string? _fullName;
    private string? _userName;
    private Roles _roles;
    private bool _isService;
    private bool _busy;

    public override string Title => "Setup: people";

    public override Right Needs => Right.Administer;

    [Inject]
    private ReadPeople Read { get; set; } = null!;

    [Inject]
    private AddPerson Add { get; set; } = null!;

    private RenderFragment Counts => builder => builder.AddContent(0, $"{_people.Count(p => p.Active)} in use, {_people.Count(p => !p.Active)} closed");

    protected override bool Concerns(Notice notice) => notice.Changes<Person>();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _people = await Read.Run(cancellationToken);

    private string State(PersonLine person) => person switch
    {
        { Active: false } => "closed",
        { IsService: true } => "a program's",
        { LockedUntil: { } until } when until > Clock.Now => $"locked until {Clock.TimeText(until)}",
        { PasswordSetAt: null } => "one-time password, not yet replaced",
        _ => "in use",
    };

    private async Task AddAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            var wanted = new NewPerson((_userName ?? "").Trim(), _fullName ?? "", _roles, _isService);
            var answer = await Add.Run(await ActorNowAsync(), wanted, Leaving);
            _problems = answer.Problems;
            if (!answer.Ok)
                return;
            _handedOut = answer.Value!.OneTimePassword is null ? null : answer.Value;
            (_fullName, _userName, _roles, _isService) = (null, null, Roles.None, false);
            await ReloadAsync();
        }
        finally
        {
            _busy = false;
        }
    }
}
