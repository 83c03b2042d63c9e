using System.Net;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.People;

public sealed class FirstAdministratorTests
{
    [Fact]
    public async Task FirstAccount_WithTheCode_IsMadeOnce()
    {
        await using var host = await LabHost.StartAsync();
        var code = host.Services.GetRequiredService<FirstAdministratorCode>().Announce();
        using var visitor = new Visitor(host);

        var wrong = await FillAsync(visitor, "aaaa-aaaa-aaaa-aaaa-aaaa", "first.one");
        var right = await FillAsync(visitor, code, "first.one");
        var again = await visitor.ReadAsync("/first-administrator");

        Assert.Contains("This is not the code", wrong, StringComparison.Ordinal);
        Assert.Contains("The account is made", right, StringComparison.Ordinal);
        Assert.Contains("There is an account already", again, StringComparison.Ordinal);
        await using var lab = host.Open();
        var person = await lab.People.SingleAsync(TestContext.Current.CancellationToken);
        Assert.Equal(Roles.Administrator, person.Roles);
        using var signedIn = await visitor.SignInAsync("first.one", "seven-otters-by-the-weir");
        Assert.Equal(HttpStatusCode.Found, signedIn.StatusCode);
    }

    [Fact]
    public async Task FirstAccount_WhereSomebodyHasOne_IsClosed()
    {
        await using var host = await LabHost.StartWithPeopleAsync();

        Assert.False(host.Services.GetRequiredService<FirstAdministratorCode>().Open);
    }

    private static async Task<string> FillAsync(Visitor visitor, string code, string userName)
    {
        using var answer = await visitor.FillAsync("/first-administrator", "first", new Dictionary<string, string>
        {
            ["Entry.Code"] = code,
            ["Entry.UserName"] = userName,
            ["Entry.FullName"] = "First One",
            ["Entry.Password"] = "seven-otters-by-the-weir",
        });
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }
}
