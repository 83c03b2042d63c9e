using Xunit;

namespace LabVolatility.Web.Tests.Setup;

public sealed class ResponseHeadersTests(PeopledHost peopled) : IClassFixture<PeopledHost>
{
    public static TheoryData<string> Paths =>
        ["/", "/sign-in", "/account", "/emergency", "/health/live", "/health/ready", "/lab.css", "/fonts/inter-latin.woff2", "/nothing-here", "/api/v1/nothing", "/_blazor"];

    [Theory, MemberData(nameof(Paths))]
    public async Task EveryAnswer_CarriesTheHeaders(string path)
    {
        using var visitor = new Visitor(peopled.Host);

        using var answer = await visitor.GetAsync(path);

        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Opener-Policy")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Resource-Policy")));
        Assert.True(answer.Headers.Contains("Permissions-Policy"));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Fact]
    public async Task PageOfASignedInPerson_IsNotStored()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);
        var person = LabHost.Demo("Sade Okonjo");
        using var _ = await visitor.SignInAsync(person.UserName, person.Password);

        using var page = await visitor.GetAsync("/setup/people");
        using var style = await visitor.GetAsync("/lab.css");

        Assert.True(page.IsSuccessStatusCode);
        Assert.True(page.Headers.CacheControl?.NoStore);
        Assert.NotEqual(true, style.Headers.CacheControl?.NoStore);
    }

    [Fact]
    public async Task FaultOnAPage_SaysAReferenceAndNoInside()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);

        var text = await visitor.ReadAsync("/sign-in?return=%00");

        Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" at LabVolatility", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PlainHttp_OutsideDemo_IsToldToComeByTls()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        host.ClientOptions.BaseAddress = new Uri("http://localhost");
        using var visitor = new Visitor(host);

        using var page = await visitor.GetAsync("/sign-in");
        using var health = await visitor.GetAsync("/health/ready");

        Assert.Equal(System.Net.HttpStatusCode.BadRequest, page.StatusCode);
        Assert.Contains("HTTPS", await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.True(health.IsSuccessStatusCode);
        Assert.Empty(visitor.SetCookies);
    }
}
