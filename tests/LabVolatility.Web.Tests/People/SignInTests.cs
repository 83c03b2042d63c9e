using System.Net;
using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Web.Tests.People;

public sealed class SignInTests
{
    [Fact]
    public async Task SignIn_RightPassword_OpensTheLaboratory()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);
        var person = LabHost.Demo("Tessa Marlowe");

        using var answer = await visitor.SignInAsync(person.UserName, person.Password, "/records?text=x");

        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.EndsWith("/records?text=x", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        using var page = await visitor.GetAsync("/account");
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
    }

    [Theory]
    [InlineData("t.marlowe", "not-the-password-at-all")]
    [InlineData("nobody.here", "night-train-to-harbour")]
    [InlineData("demo.service", "night-train-to-harbour")]
    [InlineData("t.marlowe", "")]
    public async Task SignIn_Wrong_SaysTheSameAndOpensNothing(string name, string password)
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);

        using var answer = await visitor.SignInAsync(name, password);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains(password.Length == 0 ? "Enter your sign-in name" : "do not go together", text, StringComparison.Ordinal);
        using var page = await visitor.GetAsync("/account");
        Assert.Equal(HttpStatusCode.Found, page.StatusCode);
    }

    [Fact]
    public async Task SignIn_FiveWrongTries_LocksForMinutesNotForever()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);
        var person = LabHost.Demo("Ines Fenwick");

        for (var tries = 0; tries < 5; tries++)
            (await visitor.SignInAsync(person.UserName, "wrong-wrong-wrong-wrong")).Dispose();

        await using var lab = host.Open();
        var locked = await lab.People.SingleAsync(p => p.UserName == person.UserName, TestContext.Current.CancellationToken);
        Assert.NotNull(locked.LockoutEnd);
        using var sixth = await visitor.SignInAsync(person.UserName, person.Password);
        Assert.Equal(HttpStatusCode.OK, sixth.StatusCode);
        Assert.Contains("wait a minute", await sixth.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignIn_TwentyOneFromOneAddress_IsTooMany()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);
        HttpStatusCode last = default;

        for (var tries = 0; tries < 21; tries++)
        {
            using var answer = await visitor.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/sign-in"));
            last = answer.StatusCode;
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, last);
    }

    [Fact]
    public async Task SignIn_WithoutTheFormsToken_IsRefused()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);
        var person = LabHost.Demo("Tessa Marlowe");

        using var answer = await visitor.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/sign-in")
        {
            Content = new FormUrlEncodedContent(new Dictionary<string, string>
            {
                ["_handler"] = "sign-in", ["Entry.UserName"] = person.UserName, ["Entry.Password"] = person.Password,
            }),
        });

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("//evil.example")]
    [InlineData("///evil.example")]
    [InlineData("/\\evil.example")]
    [InlineData("\\\\evil.example")]
    [InlineData("/x\\..\\evil")]
    [InlineData("https://evil.example")]
    [InlineData("http:evil.example")]
    [InlineData("javascript:alert(1)")]
    [InlineData("data:text/html,x")]
    [InlineData("evil.example")]
    [InlineData(" /today")]
    [InlineData("/\tevil.example")]
    [InlineData("/\n/evil.example")]
    [InlineData("\t//evil.example")]
    [InlineData("")]
    [InlineData(null)]
    public void LocalAddress_AnotherHost_IsTheFrontPage(string? address)
    {
        Assert.Equal("/", LocalAddress.Of(address));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/batches/26-1042")]
    [InlineData("/records?text=a//b")]
    public void LocalAddress_OwnPath_Stays(string address)
    {
        Assert.Equal(address, LocalAddress.Of(address));
    }
}
