using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.People;

public sealed class CircuitSessionTests
{
    [Theory]
    [InlineData(true, SessionEnd.Idle)]
    [InlineData(false, null)]
    public async Task CircuitSession_OnlyDrawingOthersChanges_IsIdle(bool unasked, SessionEnd? expected)
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        await using var lab = host.Open();
        var person = await lab.People.SingleAsync(p => p.UserName == "t.marlowe", TestContext.Current.CancellationToken);
        var session = new CircuitSession(host.Services.GetRequiredService<SessionCheck>(), host.Clock);
        session.Begin(PersonClaims.Make(person, host.Clock.GetUtcNow()));

        for (var minute = 0; minute < 31; minute++)
        {
            host.Clock.Advance(TimeSpan.FromMinutes(1));
            if (unasked)
                session.DrawsUnasked();
            session.Hear();
        }

        await session.HoldsAsync();
        Assert.Equal(expected, session.Ended);
    }
}
