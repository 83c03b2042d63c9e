using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The keys of the machine interface.</summary>
public sealed partial class KeysPage
{
    private IReadOnlyList<KeyLine> _keys = [];
    private IReadOnlyList<PersonLine> _owners = [];
    private IReadOnlyList<Problem> _problems = [];
    private KeyMade? _made;
    private KeyForm? _form;
    private ConfirmDialog? _confirm;

    public override string Title => "Setup: keys";

    public override Right Needs => Right.Administer;

    [Inject]
    private ReadKeys Read { get; set; } = null!;

    [Inject]
    private ReadPeople People { get; set; } = null!;

    [Inject]
    private MakeKey Make { get; set; } = null!;

    [Inject]
    private RevokeKey Revoke { get; set; } = null!;

    internal static string Scopes(KeyScopes scopes) => scopes.ToString().ToLowerInvariant();

    protected override bool Concerns(Notice notice) => notice.Changes<InterfaceKey>() || notice.Changes<Person>();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _keys = await Read.Run(cancellationToken);
        _owners = [.. (await People.Run(cancellationToken)).Where(p => p.Active).OrderByDescending(p => p.IsService)];
    }

    private async Task MakeAsync(NewKey wanted)
    {
        var answer = await Make.Run(await ActorNowAsync(), wanted, Leaving);
        _problems = answer.Problems;
        if (!answer.Ok)
            return;
        _made = answer.Value;
        _form?.Clear();
        await ReloadAsync();
    }

    private async Task RevokeAsync(KeyLine key)
    {
        if (_confirm is null || !await _confirm.AskAsync($"Revoke key {key.Name}", "The program that uses it is refused from now on. A revoked key can't be brought back; make a new one instead."))
            return;
        var answer = await Revoke.Run(await ActorNowAsync(), key.Id, Leaving);
        _problems = answer.Problems;
        await ReloadAsync();
    }
}
