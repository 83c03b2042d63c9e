using LabVolatility.Laboratory.Methods;
using LabVolatility.Web.Api;
using LabVolatility.Web.Setup;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

[Collection(InterfaceTests.Name)]
public sealed class PrecisionTests(InterfaceScene scene)
{
    private const string Path = "/calculations/precision";

    [Theory]
    [InlineData("63.0", "64.5", "true", "report", "null", "63.75", "63.8")]
    [InlineData("63.0", "64.6", "false", "more", "8", "63.8", "63.8")]
    public async Task Precision_LaboratorysR_Judges(string one, string other, string acceptable, string next, string needed, string mean, string reported)
    {
        var answer = await scene.Program.Post(Path, $$"""{"method": "EN 13016-1", "values": [{"value": {{one}}, "unit": "kPa"}, {"value": {{other}}, "unit": "kPa"}]}""");

        var json = answer.Is(200).Json;
        Assert.Equal(["repeatability", "reproducibility", "acceptable", "mean", "reported", "used", "next", "needed"], json.EnumerateObject().Select(m => m.Name));
        Assert.Equal(acceptable, json.GetProperty("acceptable").GetRawText());
        Assert.Equal(next, json.GetProperty("next").GetString());
        Assert.Equal(needed, json.GetProperty("needed").GetRawText());
        Assert.Equal(mean, json.GetProperty("mean").GetProperty("value").GetRawText());
        Assert.Equal(reported, json.GetProperty("reported").GetString());
    }

    [Fact]
    public async Task Precision_NoneSet_IsNullAndNeverZero()
    {
        var answer = await scene.Program.Post(Path, """{"method": "ASTM D5191", "values": [{"value": 63.0, "unit": "kPa"}, {"value": 80, "unit": "kPa"}]}""");

        Assert.All(["repeatability", "reproducibility", "acceptable"], name => Assert.Equal("null", answer.Is(200).Json.GetProperty(name).GetRawText()));
        Assert.Equal("report", answer.Json.GetProperty("next").GetString());
    }

    // What the demonstration shows on its screens is made up: no program may take it for a method's precision.
    [Theory, InlineData(false, 1), InlineData(true, 0)]
    public async Task Precision_OfTheDemonstration_IsNotAnswered(bool demo, int statements)
    {
        var services = scene.Host.Services;
        var answered = new AnsweredPrecision(
            services.GetRequiredService<ReadPrecision>(), services.GetRequiredService<WebSettings>() with { Demo = demo });

        Assert.Equal(statements, (await answered.Run(TestContext.Current.CancellationToken)).Count);
    }

    [Fact]
    public async Task Precision_GivenR_StandsInForTheLaboratorys()
    {
        var answer = await scene.Program.Post(Path, """{"method": "EN 13016-1", "values": [{"value": 63.0, "unit": "kPa"}, {"value": 63.6, "unit": "kPa"}], "repeatability": {"value": 500, "unit": "Pa"}}""");

        Assert.Equal("0.5", answer.Is(200).Json.GetProperty("repeatability").GetProperty("value").GetRawText());
        Assert.Equal("false", answer.Json.GetProperty("acceptable").GetRawText());
    }

    [Theory]
    [InlineData("""{"method": "ASTM D5191", "values": []}""", "/values")]
    [InlineData("""{"method": "ASTM D5191", "values": [null]}""", "/values/0")]
    [InlineData("""{"method": "ASTM D5191", "values": [{"value": 1, "unit": "bars"}]}""", "/values/0/unit")]
    [InlineData("""{"method": "ASTM D5191", "values": [{"value": 1, "unit": "bar"}], "repeatability": {"value": 0, "unit": "bar"}}""", "/repeatability/value")]
    public async Task Precision_OneMistake_IsNamedAtItsPlace(string body, string place) =>
        Assert.Equal([place], (await scene.Program.Post(Path, body)).Refuses(400).Pointers);
}
