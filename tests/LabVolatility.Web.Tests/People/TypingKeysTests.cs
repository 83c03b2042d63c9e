using System.Net;
using System.Net.Http.Json;
using LabVolatility.Web.People;
using LabVolatility.Web.Tests.Setup;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.People;

public sealed class TypingKeysTests
{
    [Fact]
    public async Task Key_SameEnvelopeAndPerson_IsTheSame()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        var keys = host.Services.GetRequiredService<TypingKeys>();
        var person = Guid.NewGuid();

        var first = keys.Run(person, null);
        host.Clock.Advance(TimeSpan.FromHours(23));
        var again = keys.Run(person, first.Envelope);

        Assert.Equal(32, Convert.FromBase64String(first.Key).Length);
        Assert.Equal((first.Key, first.Envelope), (again.Key, again.Envelope));
        Assert.Equal(first.Now + (long)TimeSpan.FromHours(23).TotalMilliseconds, again.Now);
    }

    [Fact]
    public async Task Key_OtherPersonOrDayAfterOrDamaged_IsAnother()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        var keys = host.Services.GetRequiredService<TypingKeys>();
        var person = Guid.NewGuid();
        var first = keys.Run(person, null);

        var others = keys.Run(Guid.NewGuid(), first.Envelope);
        var damaged = keys.Run(person, first.Envelope[..^8] + "AAAAAAA=");
        var nothing = keys.Run(person, "not base 64");
        host.Clock.Advance(TimeSpan.FromDays(1));
        var late = keys.Run(person, first.Envelope);

        Assert.All([others, damaged, nothing, late], other =>
        {
            Assert.NotEqual(first.Key, other.Key);
            Assert.NotEqual(first.Envelope, other.Envelope);
        });
    }

    [Fact]
    public async Task Endpoint_WithoutTheOwnHeader_GivesNoKey()
    {
        await using var host = await LabHost.StartWithPeopleAsync();
        using var visitor = new Visitor(host);
        var person = LabHost.Demo("Tessa Marlowe");
        (await visitor.SignInAsync(person.UserName, person.Password)).Dispose();

        using var foreign = await visitor.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/session/typing-key"));
        using var own = await visitor.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/session/typing-key") { Headers = { { "X-Lab-Page", "own" } } });

        Assert.Equal(HttpStatusCode.BadRequest, foreign.StatusCode);
        Assert.NotNull(await own.Content.ReadFromJsonAsync<TypingKey>(TestContext.Current.CancellationToken));
        Assert.True(own.Headers.CacheControl?.NoStore);
    }
}
