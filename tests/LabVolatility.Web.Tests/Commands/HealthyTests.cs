using LabVolatility.Web.Commands;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;
using Xunit;

namespace LabVolatility.Web.Tests.Commands;

/// <summary>What a container's supervisor asks.</summary>
public sealed class HealthyTests
{
    [Theory]
    [InlineData(StatusCodes.Status200OK, 0)]
    [InlineData(StatusCodes.Status503ServiceUnavailable, 1)]
    public async Task Laboratory_Answering_SaysWhetherItIsReady(int status, int expectedCode)
    {
        await using var laboratory = await AnsweringAsync(status);

        var (code, output, _) = await AskAsync(laboratory.Urls.Single());

        Assert.Equal(expectedCode, code);
        Assert.Equal("asked /health/ready", output.Trim());
    }

    [Fact]
    public async Task Laboratory_Gone_IsNotHealthy()
    {
        var laboratory = await AnsweringAsync(StatusCodes.Status200OK);
        var address = laboratory.Urls.Single();
        await laboratory.DisposeAsync();

        var (code, output, error) = await AskAsync(address);

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains($"{address}/health/ready does not answer", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, "http://127.0.0.1:5080/health/ready")]
    [InlineData("http://+:8080", "http://localhost:8080/health/ready")]
    [InlineData("http://0.0.0.0:8080;https://*:8443", "http://localhost:8080/health/ready")]
    [InlineData("https://[::]:8443", "https://localhost:8443/health/ready")]
    [InlineData("http://192.0.2.7:80", "http://192.0.2.7/health/ready")]
    public void Question_GoesToWhereTheServerListens(string? urls, string expected) =>
        Assert.Equal(expected, Healthy.Question(urls).AbsoluteUri);

    private static async Task<WebApplication> AnsweringAsync(int status)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var laboratory = builder.Build();
        laboratory.Run(http =>
        {
            http.Response.StatusCode = status;
            return http.Response.WriteAsync($"asked {http.Request.Path}");
        });
        await laboratory.StartAsync(TestContext.Current.CancellationToken);
        return laboratory;
    }

    private static async Task<(int? Code, string Output, string Error)> AskAsync(string urls)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.TryRunAsync(["healthy"], new CommandWorld(name => name == "ASPNETCORE_URLS" ? urls : null, output, error));
        return (code, output.ToString(), error.ToString());
    }
}
