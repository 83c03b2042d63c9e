using LabVolatility.Web.Tests.Setup;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

public sealed class CertificateCheckTests
{
    [Fact]
    public async Task Check_TooOften_MustWait()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var recipient = new Caller(host, null);
        Answered last;
        var tries = 0;
        do
        {
            last = await recipient.Get("/certificates/check/AAAA-AAAA-AAAA");
            tries++;
        }
        while (last.Status == 404 && tries < 1000);

        Assert.Equal(31, tries);
        Assert.NotEmpty(last.Refuses(429).Headers["Retry-After"]);
    }
}
