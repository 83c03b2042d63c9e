using LabVolatility.Laboratory.People;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.People;

/// <summary>Who else has the same sample or batch open now, and who is entering something there.</summary>
public sealed partial class PresenceLine : ComponentBase, IDisposable
{
    private readonly Guid _page = Guid.NewGuid();
    private IReadOnlyList<string> _others = [];
    private PresentPerson? _self;

    /// <summary>The thing that this page is about: "sample S2605-0012-X".</summary>
    [Parameter, EditorRequired]
    public string Place { get; set; } = "";

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    /// <summary>What is done there besides looking, such as the method that is measured.</summary>
    [Parameter]
    public string? Doing { get; set; }

    /// <summary>True once something was typed that is not reported yet.</summary>
    [Parameter]
    public bool Entering { get; set; }

    [Inject]
    private Presence Presence { get; set; } = null!;

    [Inject]
    private LabClock Clock { get; set; } = null!;

    [Inject]
    private CircuitSession Session { get; set; } = null!;

    public void Dispose()
    {
        Presence.Changed -= Follow;
        Presence.Leave(_page);
    }

    protected override void OnInitialized() => Presence.Changed += Follow;

    protected override void OnParametersSet()
    {
        var now = Clock.Now.ToUniversalTime();
        var stays = _self is not null && _self.Place == Place && _self.Doing == Doing;
        var self = new PresentPerson(
            _page, Actor.Id, Actor.Name, Place, stays ? _self!.Since : now, Doing, Entering ? (stays ? _self!.EnteringSince : null) ?? now : null);
        if (self == _self)
            return;
        _self = self;
        Presence.Put(self);
        Look();
    }

    private string Words(PresentPerson person)
    {
        var isSelf = person.PersonId == Actor.Id;
        var who = isSelf ? "You are" : $"{person.Name} is";
        var where = isSelf ? " in another window" : "";
        return (person.EnteringSince, person.Doing) switch
        {
            ({ } since, { } what) when what == Doing => $"{who} entering here{where} since {Clock.TimeText(since)}{(isSelf ? ": both windows share one draft" : "")}",
            ({ } since, { } what) => $"{who} entering {what}{where} since {Clock.TimeText(since)}",
            (_, { } what) when what != Doing => $"{who} at the bench with {what}{where} since {Clock.TimeText(person.Since)}",
            _ => $"{who} here{where} since {Clock.TimeText(person.Since)}",
        };
    }

    private void Look() => _others = [.. Presence.At(Place).Where(p => p.Page != _page).Select(Words).Distinct()];

    private void Follow(string place)
    {
        if (place == Place)
            _ = InvokeAsync(Redraw);
    }

    private void Redraw()
    {
        Look();
        Session.DrawsUnasked();
        StateHasChanged();
    }
}
