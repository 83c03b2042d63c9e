using Bunit;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

/// <summary>An open page while others work, on the whole program with its own database.</summary>
public sealed class LivePageTests : BunitContext, IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private LabHost _host = null!;
    private Person _self = null!;
    private CircuitSession _session = null!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _host = await LabHost.StartWithPeopleAsync();
        await using (var lab = _host.Open())
            _self = await lab.People.SingleAsync(p => p.UserName == "t.marlowe", Cancel);
        _session = new CircuitSession(_host.Services.GetRequiredService<SessionCheck>(), _host.Clock);
        _session.Begin(PersonClaims.Make(_self, _host.Clock.GetUtcNow()));
        var signedIn = new SignedIn(PersonClaims.Make(_self, _host.Clock.GetUtcNow()));
        Services.AddSingleton(_session);
        Services.AddSingleton<TimeProvider>(_host.Clock);
        Services.AddSingleton(_host.Services.GetRequiredService<NoticeBoard>());
        Services.AddSingleton(_host.Services.GetRequiredService<LabClock>());
        Services.AddSingleton(new CurrentActor(signedIn, new FindActor(_host.Open), _session));
    }

    async ValueTask IAsyncDisposable.DisposeAsync()
    {
        await DisposeAsync();
        await _host.DisposeAsync();
    }

    [Fact]
    public async Task Page_ChangeThatShowsOnIt_IsReadAgainAndSaysWhoDidWhat()
    {
        var page = Render<ProbePage>();

        await AddAsync(new SamplePoint { Code = "P-1", Name = "Line" }, "add sample point");
        await AddAsync(new Tank { Code = "T-1", Name = "Tank 1" }, "add tank");

        page.WaitForAssertion(() => Assert.Matches(@"^\d\d:00:00 Kola Adeyemi added tank T-1\.$", page.Markup), Patience);
        Assert.Equal(2, page.Instance.Readings);
    }

    [Fact]
    public async Task Page_OwnChange_IsReadAgainLaterWithoutAWord()
    {
        var page = Render<ProbePage>();

        await AddAsync(new Tank { Code = "T-1", Name = "Tank 1" }, "add tank", _self);

        await UntilAsync(() => page.Instance.Readings == 2);
        Assert.Empty(page.Markup);
    }

    [Fact]
    public async Task Page_FaultWhileFollowing_SaysSoAndKeepsNobodyElse()
    {
        var failing = Render<ProbePage>();
        var other = Render<ProbePage>();
        failing.Instance.Fails = true;

        await AddAsync(new Tank { Code = "T-1", Name = "Tank 1" }, "add tank");

        failing.WaitForAssertion(() => Assert.Contains("could not read", failing.Markup, StringComparison.Ordinal), Patience);
        other.WaitForAssertion(() => Assert.Contains("added tank T-1", other.Markup, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task Page_ThatWasLeft_IsNotReadAgain()
    {
        var left = Render<ProbePage>();
        var page = left.Instance;
        page.Dispose();
        var other = Render<ProbePage>();

        await AddAsync(new Tank { Code = "T-1", Name = "Tank 1" }, "add tank");

        other.WaitForAssertion(() => Assert.Contains("added tank T-1", other.Markup, StringComparison.Ordinal), Patience);
        Assert.Equal(1, page.Readings);
    }

    [Fact]
    public async Task Page_SessionEnded_StaysAndCatchesUpOnceItGoesOn()
    {
        var page = Render<ProbePage>();
        _host.Clock.Advance(SessionTimes.Idle + TimeSpan.FromMinutes(1));
        Assert.False(await _session.HoldsAsync());

        await AddAsync(new Tank { Code = "T-1", Name = "Tank 1" }, "add tank");
        _host.Clock.Advance(LabPage.BetweenReadings);
        var readings = page.Instance.Readings;
        Assert.True(_session.TryRenew(PersonClaims.Make(_self, _host.Clock.GetUtcNow())));

        await UntilAsync(() => page.Markup.Contains("added tank T-1", StringComparison.Ordinal));
        Assert.Equal(1, readings);
    }

    // The page's clock stands still until it is moved.
    private async Task UntilAsync(Func<bool> seen)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        patience.CancelAfter(Patience);
        while (!seen())
        {
            patience.Token.ThrowIfCancellationRequested();
            _host.Clock.Advance(LabPage.BetweenReadings);
            await Task.Yield();
        }
    }

    private async Task AddAsync(object thing, string act, Person? by = null)
    {
        await using var lab = _host.Open();
        lab.Act = new Act(by?.Id ?? Guid.NewGuid(), by?.FullName ?? "Kola Adeyemi", "page", act);
        lab.Add(thing);
        await lab.SaveChangesAsync(Cancel);
    }

    private sealed class SignedIn(System.Security.Claims.ClaimsPrincipal user) : AuthenticationStateProvider
    {
        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(user));
    }
}
