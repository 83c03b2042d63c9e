using LabVolatility.Laboratory.Storage;
using LabVolatility.Web.Setup;
using Microsoft.Extensions.Configuration;
using Xunit;

namespace LabVolatility.Web.Tests.Setup;

public sealed class ListeningTests
{
    [Theory]
    [InlineData("http://127.0.0.1:5080")]
    [InlineData("http://localhost:5080")]
    [InlineData("http://[::1]:5080")]
    [InlineData("http://127.0.0.9:80;http://[::1]:81")]
    public void Demo_Loopback_MayStart(string addresses)
    {
        Assert.Null(Listening.Refusal(Settings(addresses, demo: true)));
    }

    [Theory]
    [InlineData("http://0.0.0.0:5080")]
    [InlineData("http://*:5080")]
    [InlineData("http://+:5080")]
    [InlineData("http://[::]:5080")]
    [InlineData("http://192.0.2.7:5080")]
    [InlineData("http://lab.example:5080")]
    [InlineData("http://127.0.0.1:5080;http://0.0.0.0:5081")]
    [InlineData("http://127.0.0.1.example:5080")]
    [InlineData("nonsense")]
    public void Demo_AnyOtherAddress_IsRefused(string addresses)
    {
        var refusal = Listening.Refusal(Settings(addresses, demo: true));

        Assert.Contains("loopback only", refusal, StringComparison.Ordinal);
        Assert.Null(Listening.Refusal(Settings(addresses, demo: false)));
    }

    [Fact]
    public void Demo_AddressAmongKestrelsEndpoints_IsRefused()
    {
        var configuration = Configuration(("Kestrel:Endpoints:Open:Url", "http://0.0.0.0:80"));

        Assert.NotNull(Listening.Refusal(Of(Listening.Addresses(configuration), demo: true)));
    }

    [Fact]
    public void Addresses_NothingSet_IsLoopback5080()
    {
        Assert.Equal(["http://127.0.0.1:5080"], Listening.Addresses(Configuration()));
    }

    [Fact]
    public void CookiesWithoutTls_OutsideDemo_Never()
    {
        Assert.False(Settings("http://127.0.0.1:5080", demo: false).CookiesWithoutTls);
        Assert.False(Settings("http://192.0.2.7:5080", demo: true).CookiesWithoutTls);
        Assert.True(Settings("http://127.0.0.1:5080", demo: true).CookiesWithoutTls);
    }

    private static WebSettings Settings(string addresses, bool demo) => Of(Listening.Addresses(Configuration(("urls", addresses))), demo);

    private static WebSettings Of(IReadOnlyList<string> addresses, bool demo) =>
        new() { Demo = demo, Addresses = addresses, Proxies = [], Storage = StorageOptions.From(_ => null) };

    private static IConfiguration Configuration(params (string Key, string Value)[] values) =>
        new ConfigurationBuilder().AddInMemoryCollection(values.Select(v => KeyValuePair.Create(v.Key, (string?)v.Value))).Build();
}
