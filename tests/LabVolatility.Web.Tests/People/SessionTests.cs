using System.Net;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.People;

public sealed class SessionTests
{
    [Fact]
    public async Task Session_HalfAnHourIdle_Ends()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = await SignedInAsync(host, "Tessa Marlowe");

        host.Clock.Advance(TimeSpan.FromMinutes(29));
        using var still = await visitor.GetAsync("/account");
        host.Clock.Advance(TimeSpan.FromMinutes(31));
        using var ended = await visitor.GetAsync("/account");

        Assert.Equal(HttpStatusCode.OK, still.StatusCode);
        Assert.Equal(HttpStatusCode.Found, ended.StatusCode);
    }

    [Fact]
    public async Task Session_TwelveHoursOfWork_Ends()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = await SignedInAsync(host, "Tessa Marlowe");

        for (var quarter = 0; quarter < 36; quarter++)
        {
            host.Clock.Advance(TimeSpan.FromMinutes(20));
            using var still = await visitor.SendAsync(Keep());
            Assert.Equal(HttpStatusCode.NoContent, still.StatusCode);
        }

        host.Clock.Advance(TimeSpan.FromMinutes(1));
        using var ended = await visitor.SendAsync(Keep());
        Assert.Equal(HttpStatusCode.Unauthorized, ended.StatusCode);
    }

    [Fact]
    public async Task Session_AccountClosed_EndsWithinSeconds()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = await SignedInAsync(host, "Tessa Marlowe");
        using var before = await visitor.GetAsync("/account");

        await CloseAsync(host, "t.marlowe");
        host.Clock.Advance(TimeSpan.FromSeconds(5));
        using var after = await visitor.GetAsync("/account");

        Assert.Equal(HttpStatusCode.OK, before.StatusCode);
        Assert.Equal(HttpStatusCode.Found, after.StatusCode);
    }

    [Fact]
    public async Task SignOut_TheOldCookie_OpensNothingAnyMore()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = await SignedInAsync(host, "Tessa Marlowe");
        var stolen = visitor.CookieHeader;

        using var signedOut = await visitor.FillAsync("/account", "", new Dictionary<string, string> { ["leave"] = "yes" }, "/sign-out");
        using var thief = new Visitor(host);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/account");
        request.Headers.Add("Cookie", stolen);
        using var replay = await thief.SendAsync(request);

        Assert.Equal(HttpStatusCode.Found, signedOut.StatusCode);
        Assert.Equal(HttpStatusCode.Found, replay.StatusCode);
    }

    [Fact]
    public async Task OneTimePassword_UntilReplaced_OpensTheAccountOnly()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        var password = await OneTimeAsync(host, "t.marlowe");
        using var visitor = new Visitor(host);

        (await visitor.SignInAsync("t.marlowe", password)).Dispose();
        using var elsewhere = await visitor.GetAsync("/records");
        using var weak = await visitor.FillAsync("/account", "password", Passwords(password, "short"));
        using var changed = await visitor.FillAsync("/account", "password", Passwords(password, "seven-otters-by-the-weir"));
        using var after = await visitor.GetAsync("/records");

        Assert.Equal("/account", elsewhere.Headers.Location?.ToString());
        Assert.Contains("at least 15 characters", await weak.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Contains("The password is changed", await changed.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, after.StatusCode);
    }

    [Fact]
    public async Task OpenPage_AccountClosed_IsCoveredAndActsForNobody()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        await using var scope = host.Services.CreateAsyncScope();
        var session = scope.ServiceProvider.GetRequiredService<CircuitSession>();
        session.Begin(PersonClaims.Make(await PersonAsync(host, "t.marlowe"), host.Clock.GetUtcNow()));
        var told = 0;
        session.Changed += () => told++;

        var held = await session.HoldsAsync();
        await CloseAsync(host, "t.marlowe");
        host.Clock.Advance(TimeSpan.FromSeconds(5));
        var holds = await session.HoldsAsync();

        Assert.True(held);
        Assert.False(holds);
        Assert.Equal(SessionEnd.AccountChanged, session.Ended);
        Assert.Equal(1, told);
    }

    [Fact]
    public async Task OpenPage_Ended_GoesOnForTheSamePersonOnly()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        await using var scope = host.Services.CreateAsyncScope();
        var session = scope.ServiceProvider.GetRequiredService<CircuitSession>();
        var now = host.Clock.GetUtcNow();
        session.Begin(PersonClaims.Make(await PersonAsync(host, "t.marlowe"), now));
        host.Clock.Advance(TimeSpan.FromMinutes(31));
        var holds = await session.HoldsAsync();

        var other = session.TryRenew(PersonClaims.Make(await PersonAsync(host, "k.adeyemi"), host.Clock.GetUtcNow()));
        var same = session.TryRenew(PersonClaims.Make(await PersonAsync(host, "t.marlowe"), host.Clock.GetUtcNow()));

        Assert.False(holds);
        Assert.False(other);
        Assert.True(same);
        Assert.True(await session.HoldsAsync());
    }

    [Fact]
    public async Task OpenPage_KeptByItsScript_LivesOnForItsOwnPersonOnly()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        await using var scope = host.Services.CreateAsyncScope();
        var session = scope.ServiceProvider.GetRequiredService<CircuitSession>();
        var owner = PersonClaims.Make(await PersonAsync(host, "t.marlowe"), host.Clock.GetUtcNow());
        session.Begin(owner);

        host.Clock.Advance(TimeSpan.FromMinutes(29));
        session.Touch(owner);
        host.Clock.Advance(TimeSpan.FromMinutes(29));
        var holds = await session.HoldsAsync();
        session.Touch(PersonClaims.Make(await PersonAsync(host, "k.adeyemi"), host.Clock.GetUtcNow()));
        host.Clock.Advance(TimeSpan.FromMinutes(2));

        Assert.True(holds);
        Assert.False(await session.HoldsAsync());
        Assert.Equal(SessionEnd.Idle, session.Ended);
    }

    private static async Task<Visitor> SignedInAsync(LabHost host, string fullName)
    {
        var visitor = new Visitor(host);
        var person = LabHost.Demo(fullName);
        (await visitor.SignInAsync(person.UserName, person.Password)).Dispose();
        return visitor;
    }

    private static HttpRequestMessage Keep() => new(HttpMethod.Post, "/session/keep") { Headers = { { "X-Lab-Page", "keep" } } };

    private static Dictionary<string, string> Passwords(string old, string wanted) =>
        new() { ["Entry.Password"] = old, ["Entry.NewPassword"] = wanted, ["Entry.Again"] = wanted };

    private static async Task<Person> PersonAsync(LabHost host, string userName)
    {
        await using var lab = host.Open();
        return await lab.People.AsNoTracking().SingleAsync(p => p.UserName == userName, TestContext.Current.CancellationToken);
    }

    private static async Task<Actor> AdministratorAsync(LabHost host)
    {
        var person = await PersonAsync(host, "s.okonjo");
        return new Actor(person.Id, person.FullName, person.Roles, "page");
    }

    private static async Task CloseAsync(LabHost host, string userName)
    {
        await using var scope = host.Services.CreateAsyncScope();
        var closed = await scope.ServiceProvider.GetRequiredService<SetPersonActive>().Run(
            await AdministratorAsync(host), (await PersonAsync(host, userName)).Id, active: false, "left", TestContext.Current.CancellationToken);
        Assert.True(closed.Ok, closed.Text);
    }

    private static async Task<string> OneTimeAsync(LabHost host, string userName)
    {
        await using var scope = host.Services.CreateAsyncScope();
        var given = await scope.ServiceProvider.GetRequiredService<ResetPassword>().Run(
            await AdministratorAsync(host), (await PersonAsync(host, userName)).Id, TestContext.Current.CancellationToken);
        return given.Value!.OneTimePassword!;
    }
}
