using System.Net;
using System.Text.RegularExpressions;
using LabVolatility.Web.Tests.Setup;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.StaticAssets;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.People;

/// <summary>Walks every address that the program has, without signing in.</summary>
public sealed partial class AnonymousTests(PeopledHost peopled) : IClassFixture<PeopledHost>
{
    [Fact]
    public async Task EveryAddress_WithoutSignIn_IsClosedUnlessListed()
    {
        var seen = new List<string>();

        foreach (var endpoint in peopled.Host.Services.GetServices<EndpointDataSource>().SelectMany(s => s.Endpoints).OfType<RouteEndpoint>())
        {
            if (endpoint.Metadata.GetMetadata<StaticAssetDescriptor>() is not null || Open().IsMatch(endpoint.RoutePattern.RawText ?? ""))
                continue;
            using var visitor = new Visitor(peopled.Host);
            var path = "/" + Parameter().Replace(endpoint.RoutePattern.RawText!.TrimStart('/'), Guid.Empty.ToString());
            var method = endpoint.Metadata.GetMetadata<HttpMethodMetadata>() is { HttpMethods: [var first, ..] } ? first : "GET";
            using var answer = await visitor.SendAsync(new HttpRequestMessage(new HttpMethod(method), path));
            var closed = answer.StatusCode == HttpStatusCode.Unauthorized
                || (answer.StatusCode == HttpStatusCode.Found && answer.Headers.Location!.ToString().Contains("/sign-in?return=", StringComparison.Ordinal));
            if (!closed || endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null)
                seen.Add($"{method} {path}: {answer.StatusCode}");
        }

        Assert.Empty(seen);
    }

    [Theory]
    [InlineData("/sign-in")]
    [InlineData("/first-administrator")]
    [InlineData("/emergency")]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    [InlineData("/lab.css")]
    public async Task ListedAddress_WithoutSignIn_Answers(string path)
    {
        using var visitor = new Visitor(peopled.Host);

        using var answer = await visitor.GetAsync(path);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task UnknownAddress_WithoutSignIn_AsksToSignIn()
    {
        using var visitor = new Visitor(peopled.Host);

        using var answer = await visitor.GetAsync("/nothing-here");

        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
    }

    [Fact]
    public async Task Emergency_WhileTheLaboratoryIsNotOpen_Answers()
    {
        await using var host = LabHost.Begin(more: services => services.AddSingleton<Web.Setup.IStartupWork, NeverDone>());
        using var visitor = new Visitor(host);

        var text = await visitor.ReadAsync("/emergency");

        Assert.Contains("Not entered yet.", text, StringComparison.Ordinal);
        Assert.Contains("H₂S alarm", text, StringComparison.Ordinal);
    }

    // Under api/ the last one says of any address that does not exist that it does not.
    [GeneratedRegex("^/?(sign-in|sign-out|first-administrator|health/(live|ready)|(api/v1/)?certificates/check(/.*)?|api/\\{.*)$")]
    private static partial Regex Open();

    [GeneratedRegex(@"\{[^}]+\}")]
    private static partial Regex Parameter();

    private sealed class NeverDone : Web.Setup.IStartupWork
    {
        public string What => "Nothing ends here";

        public Task RunAsync(IProgress<Web.Setup.StartupProgress> progress, CancellationToken cancellationToken) =>
            Task.Delay(Timeout.Infinite, cancellationToken);
    }
}
