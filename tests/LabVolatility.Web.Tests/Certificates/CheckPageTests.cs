using System.Net;
using LabVolatility.Web.Tests.Setup;
using Xunit;

namespace LabVolatility.Web.Tests.Certificates;

/// <summary>What a recipient is told, without signing in.</summary>
public sealed class CheckPageTests
{
    [Fact]
    public async Task Check_UnknownCode_SaysSoAndNothingMore()
    {
        await using var host = await LabHost.StartAsync();
        using var visitor = new Visitor(host);

        var unknown = await visitor.ReadAsync("/certificates/check/7H2K-9QXB-41TN");
        var garbage = await visitor.ReadAsync("/certificates/check/hello");

        Assert.Contains("No certificate carries this code", unknown, StringComparison.Ordinal);
        Assert.Contains("No certificate carries this code", garbage, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_Typed_IsAnsweredOnTheSamePage()
    {
        await using var host = await LabHost.StartAsync();
        using var visitor = new Visitor(host);

        using var answer = await visitor.FillAsync("/certificates/check", "check", new Dictionary<string, string> { ["Typed"] = "7H2K-9QXB-41TN" });
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("No certificate carries this code", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_ManyGuesses_AreSlowedDown()
    {
        await using var host = await LabHost.StartAsync();
        using var visitor = new Visitor(host);

        var answers = new List<HttpStatusCode>();
        for (var guess = 0; guess < 25; guess++)
        {
            using var answer = await visitor.GetAsync($"/certificates/check/{guess}");
            answers.Add(answer.StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, answers[0]);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[^1]);
    }

    [Theory]
    [InlineData("/certificates/C2600001.pdf")]
    [InlineData("/batches/26-1042/certificate.pdf")]
    public async Task Pdf_WithoutSignIn_AsksToSignIn(string path)
    {
        await using var host = await LabHost.StartAsync();
        using var visitor = new Visitor(host);

        using var answer = await visitor.GetAsync(path);

        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.Contains("/sign-in", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
    }
}
