using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>One account: name, roles, one-time password, closing.</summary>
public sealed partial class PersonPage
{
    private PersonLine? _person;
    private IReadOnlyList<Problem> _problems = [];
    private PersonAdded? _handedOut;
    private string? _fullName;
    private string? _reason;
    private string? _done;
    private Roles _roles;
    private bool _busy;

    [Parameter]
    public Guid Id { get; set; }

    public override string Title => _person?.FullName ?? "Account";

    public override Right Needs => Right.Administer;

    [Inject]
    private ReadPeople Read { get; set; } = null!;

    [Inject]
    private ChangeRoles Change { get; set; } = null!;

    [Inject]
    private ResetPassword Reset { get; set; } = null!;

    [Inject]
    private SetPersonActive SetActive { get; set; } = null!;

    [Inject]
    private SessionCheck Sessions { get; set; } = null!;

    protected override bool KeepsTyping => true;

    protected override bool Concerns(Notice notice) => notice.Changes<Person>() && notice.IsAbout<Person>(Id);

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _person = (await Read.Run(cancellationToken)).SingleOrDefault(p => p.Id == Id);
        Missing = _person is null ? "There is no such account." : null;
        (_fullName, _roles) = (_person?.FullName, _person?.Roles ?? Roles.None);
    }

    private Task SaveAsync() => DoAsync("Saved.", async actor => (await Change.Run(actor, Id, _fullName ?? "", _roles, Leaving)).Problems);

    private Task ResetAsync() => DoAsync(null, async actor =>
    {
        var answer = await Reset.Run(actor, Id, Leaving);
        _handedOut = answer.Value;
        return answer.Problems;
    });

    private Task ToggleAsync()
    {
        var active = !_person!.Active;
        return DoAsync(active ? "The account is open again." : "The account is closed; its sessions end within seconds.", async actor =>
            (await SetActive.Run(actor, Id, active, string.IsNullOrWhiteSpace(_reason) ? null : _reason.Trim(), Leaving)).Problems);
    }

    private async Task DoAsync(string? done, Func<Actor, Task<IReadOnlyList<Problem>>> act)
    {
        if (_busy)
            return;
        _busy = true;
        _done = null;
        try
        {
            _problems = await act(await ActorNowAsync());
            if (_problems.Count > 0)
                return;
            Sessions.Forget(Id);
            _done = done;
            await ReloadAsync();
        }
        finally
        {
            _busy = false;
        }
    }
}
