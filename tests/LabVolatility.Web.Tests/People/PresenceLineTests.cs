using Bunit;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.People;

public sealed class PresenceLineTests : BunitContext, IClassFixture<PeopledHost>
{
    private const string Place = "sample S2605-0012-X";
    private const string Method = "ASTM D5191";

    private static readonly Actor Ines = new(Guid.NewGuid(), "Ines Fenwick", Roles.Analyst, "page");
    private static readonly Actor Oskar = new(Guid.NewGuid(), "Oskar Brandt", Roles.Analyst, "page");

    private readonly string _time;

    public PresenceLineTests(PeopledHost peopled)
    {
        var clock = peopled.Host.Services.GetRequiredService<LabClock>();
        _time = clock.TimeText(clock.Now);
        Services.AddSingleton(clock);
        Services.AddSingleton(new Presence(peopled.Host.Clock));
        Services.AddSingleton(new CircuitSession(peopled.Host.Services.GetRequiredService<SessionCheck>(), peopled.Host.Clock));
    }

    [Fact]
    public void PresenceLine_TwoPeople_SeeEachOther()
    {
        var first = Line(Ines);
        var second = Line(Oskar, Method);

        first.WaitForAssertion(() => Assert.Contains($"Oskar Brandt is at the bench with {Method} since {_time}", first.Markup, StringComparison.Ordinal));
        Assert.Contains($"Ines Fenwick is here since {_time}", second.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void PresenceLine_OneWhoTypes_IsSaidToBeEntering()
    {
        var first = Line(Ines, Method);
        var second = Line(Oskar, Method);

        second.Render(p => p.Add(l => l.Entering, true));

        first.WaitForAssertion(() => Assert.Contains($"Oskar Brandt is entering here since {_time}", first.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public void PresenceLine_OneWhoLeaves_DisappearsAtTheOther()
    {
        var first = Line(Ines);
        var second = Line(Oskar);
        first.WaitForAssertion(() => Assert.Contains("Oskar Brandt", first.Markup, StringComparison.Ordinal));

        second.Instance.Dispose();

        first.WaitForAssertion(() => Assert.DoesNotContain("Oskar Brandt", first.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public void PresenceLine_OwnSecondWindow_SaysThatBothShareOneDraft()
    {
        var first = Line(Ines, Method, entering: true);
        var second = Line(Ines, Method);

        Assert.Contains("You are entering here in another window", second.Markup, StringComparison.Ordinal);
        Assert.Contains("both windows share one draft", second.Markup, StringComparison.Ordinal);
        first.WaitForAssertion(() => Assert.Contains("You are here in another window", first.Markup, StringComparison.Ordinal));
    }

    private IRenderedComponent<PresenceLine> Line(Actor actor, string? doing = null, bool entering = false) => Render<PresenceLine>(p => p
        .Add(l => l.Place, Place).Add(l => l.Actor, actor).Add(l => l.Doing, doing).Add(l => l.Entering, entering));
}
