using LabVolatility.Web.Tests.Setup;
using Xunit;

namespace LabVolatility.Web.Tests.People;

public sealed class CookieTests
{
    [Fact]
    public async Task Cookies_OutsideDemo_AreBoundToTheHostAndToTls()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);
        var person = LabHost.Demo("Tessa Marlowe");

        using var _ = await visitor.SignInAsync(person.UserName, person.Password);

        Assert.Equal(2, visitor.SetCookies.Count);
        Assert.All(visitor.SetCookies, cookie =>
        {
            Assert.StartsWith("__Host-", cookie, StringComparison.Ordinal);
            Assert.Contains("; secure", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("; httponly", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("; path=/", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("; samesite=", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("domain=", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("expires=", cookie, StringComparison.OrdinalIgnoreCase);
        });
    }

    [Fact]
    public async Task Cookies_InTheDemo_WorkOverPlainHttp()
    {
        await using var host = await LabHost.StartAsync(demo: true);
        using var visitor = new Visitor(host);
        var person = LabHost.Demo("Tessa Marlowe");

        using var _ = await visitor.SignInAsync(person.UserName, person.Password);

        Assert.All(visitor.SetCookies, cookie => Assert.DoesNotContain("; secure", cookie, StringComparison.OrdinalIgnoreCase));
        Assert.Contains(person.FullName, await visitor.ReadAsync("/account"), StringComparison.Ordinal);
    }
}
