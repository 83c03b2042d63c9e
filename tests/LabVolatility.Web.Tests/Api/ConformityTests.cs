using Xunit;

namespace LabVolatility.Web.Tests.Api;

[Collection(InterfaceTests.Name)]
public sealed class ConformityTests(InterfaceScene scene)
{
    private const string Path = "/calculations/conformity";

    // ASTM E29, rounding and absolute method; a tie goes to the even digit.
    [Theory]
    [InlineData("9.05", "9.0", "rounding", "conforms", "9.0")]
    [InlineData("9.05", "9.0", "absolute", "does-not-conform", "9.05")]
    [InlineData("9.06", "9.0", "rounding", "does-not-conform", "9.1")]
    [InlineData("9.15", "9.1", "rounding", "does-not-conform", "9.2")]
    public async Task Bare_Simple_ComparesAsAsked(string value, string maximum, string comparison, string outcome, string compared)
    {
        var answer = await scene.Program.Post(Path, $$"""{"value": {"value": {{value}}, "unit": "psi"}, "maximum": {"value": {{maximum}}, "unit": "psi"}, "comparison": "{{comparison}}", "digits": 1}""");

        Assert.Equal(outcome, answer.Is(200).Json.GetProperty("outcome").GetString());
        Assert.Equal(compared, answer.Json.GetProperty("limits")[0].GetProperty("compared").GetString());
    }

    [Theory]
    [InlineData("58.2", 1, "conforms")]
    [InlineData("58.3", 1, "not-decided")]
    [InlineData("58.3", 2, "conforms")]
    [InlineData("61.7", 1, "not-decided")]
    [InlineData("61.8", 1, "does-not-conform")]
    public async Task Bare_Guarded_MovesTheEdges(string value, int count, string outcome)
    {
        var answer = await scene.Program.Post(Path, $$"""{"value": {"value": {{value}}, "unit": "kPa"}, "maximum": {"value": 60.0, "unit": "kPa"}, "reproducibility": {"value": 3.0, "unit": "kPa"}, "repeatability": {"value": 1.5, "unit": "kPa"}, "count": {{count}}, "rule": "guarded", "digits": 1}""");

        Assert.Equal(outcome, answer.Is(200).Json.GetProperty("outcome").GetString());
    }

    [Fact]
    public async Task Bare_GuardedWithoutReproducibility_IsNotDecided()
    {
        var answer = await scene.Program.Post(Path, """{"value": {"value": 50, "unit": "kPa"}, "maximum": {"value": 60.0, "unit": "kPa"}, "rule": "guarded"}""");

        Assert.Equal("not-decided", answer.Is(200).Json.GetProperty("outcome").GetString());
        Assert.Equal("null", answer.Json.GetProperty("limits")[0].GetProperty("probabilityBeyond").GetRawText());
    }

    [Fact]
    public async Task Bare_ValueInOtherUnit_IsConverted()
    {
        var answer = await scene.Program.Post(Path, """{"value": {"value": 59900, "unit": "Pa"}, "maximum": {"value": 60.0, "unit": "kPa"}, "digits": 1}""");

        Assert.Equal("59.9", answer.Is(200).Json.GetProperty("limits")[0].GetProperty("value").GetProperty("value").GetRawText());
    }

    // 40 CFR 1090.215(b): 1.0 psi for 9 to 10 % (V/V) ethanol, not for a blendstock; season by 40 CFR 1090.80.
    [Theory]
    [InlineData("terminal", "2026-05-10", "finished", "9.8", "10.0", "conforms", "10")]
    [InlineData("terminal", "2026-05-10", "finished", "9", "10.0", "conforms", "10")]
    [InlineData("terminal", "2026-05-10", "finished", "8.9", "10.0", "does-not-conform", "9")]
    [InlineData("terminal", "2026-05-10", "finished", "null", "10.0", "does-not-conform", "9")]
    [InlineData("terminal", "2026-05-10", "blendstock", "9.8", "10.0", "does-not-conform", "9")]
    [InlineData("terminal", "2026-05-10", "hand-blend", "9.8", "10.0", "conforms", "10")]
    [InlineData("terminal", "2026-04-30", "finished", "9.8", "15.0", "no-limit", null)]
    [InlineData("retail", "2026-05-31", "finished", "9.8", "15.0", "no-limit", null)]
    [InlineData("retail", "2026-06-01", "finished", "9.8", "10.05", "conforms", "10")]
    [InlineData("terminal", "2026-09-15", "finished", "9.8", "10.06", "does-not-conform", "10")]
    public async Task Catalogue_FederalLimit_FollowsSeasonAndEthanol(
        string point, string date, string state, string ethanol, string value, string outcome, string? maximum)
    {
        var answer = await scene.Program.Post(Path, $$"""{"grade": "gasoline", "state": "{{state}}", "area": "US-9.0", "pointOfCompliance": "{{point}}", "date": "{{date}}", "ethanolPercent": {{ethanol}}, "results": [{"quantity": "RVP", "value": {"value": {{value}}, "unit": "psi"}, "method": "ASTM D5191", "correlation": null}]}""");

        Assert.Equal(outcome, answer.Is(200).Json.GetProperty("outcome").GetString());
        Assert.Equal(maximum is null ? 0 : 1, answer.Json.GetProperty("limits").GetArrayLength());
        if (maximum is not null)
            Assert.Equal(maximum, answer.Json.GetProperty("limits")[0].GetProperty("effectiveMaximum").GetProperty("value").GetRawText());
    }

    [Theory]
    [InlineData("DVPE", "ASTM D5191", "null", "US-9.0")]
    [InlineData("RVP", "ASTM D5191", "\"CARB\"", "US-9.0")]
    [InlineData("DVPE", "ASTM D5191", "null", "EN228-A")]
    public async Task Catalogue_ResultOfAnotherKind_IsIncomplete(string quantity, string method, string correlation, string area)
    {
        var answer = await scene.Program.Post(Path, $$"""{"grade": "gasoline", "area": "{{area}}", "pointOfCompliance": "terminal", "date": "2026-05-10", "results": [{"quantity": "{{quantity}}", "value": {"value": 8, "unit": "psi"}, "method": "{{method}}", "correlation": {{correlation}}}]}""");

        Assert.Equal("incomplete", answer.Is(200).Json.GetProperty("outcome").GetString());
    }

    [Fact]
    public async Task Catalogue_SeveralResults_MeanIsUnroundedAndFurtherLimitsAreListed()
    {
        var answer = await scene.Program.Post(Path, """{"grade": "G95", "area": "EN228-A", "date": "2026-05-10", "rule": "guarded", "results": [{"quantity": "DVPE", "value": {"value": 57.94, "unit": "kPa"}, "method": "EN 13016-1"}, {"quantity": "DVPE", "value": {"value": 57.99, "unit": "kPa"}, "method": "EN 13016-1"}]}""");

        var limits = answer.Is(200).Json.GetProperty("limits");
        Assert.Equal("conforms", answer.Json.GetProperty("outcome").GetString());
        Assert.Equal("57.965", limits[0].GetProperty("value").GetProperty("value").GetRawText());
        Assert.Equal("incomplete", limits[1].GetProperty("outcome").GetString());
    }

    // Ends of what is taken: none of them may leave what a decimal or a double holds.
    [Fact]
    public async Task Bare_AnyExtreme_IsAnsweredOrRefused()
    {
        string[] values = ["0", "-1000000000", "1000000000", "1e-28", "59.99999999999999999999999999", "7e28", "-7e28"];
        string[] precisions = ["1e-9", "1e-28", "0.5", "1000000000", "7e28"];
        string[] confidences = ["0.5", "0.95", "0.999999999", "0.9999999999999999999999999999"];
        foreach (var value in values)
        {
            foreach (var maximum in values)
            {
                foreach (var bigR in precisions)
                {
                    var confidence = confidences[(value.Length + maximum.Length + bigR.Length) % confidences.Length];
                    var answer = await scene.Program.Post(Path, $$"""{"value": {{value}}, "maximum": {{maximum}}, "reproducibility": {{bigR}}, "repeatability": {{bigR}}, "count": 1000000, "rule": "guarded", "confidence": {{confidence}}, "digits": 1}""");

                    Assert.True(answer.Status is 200 or 400, $"{answer.Status}: {value} {maximum} {bigR} {confidence} {answer.Text}");
                }
            }
        }
    }

    public static TheoryData<string, string> Mistakes => new()
    {
        { """{"value": 1, "digits": 1}""", "/maximum" },
        { """{"value": 1, "maximum": {"value": 2, "unit": "kPa"}, "digits": 1}""", "/value" },
        { """{"value": {"value": -1, "unit": "kPa"}, "maximum": {"value": 2, "unit": "kPa"}, "digits": 1}""", "/value/value" },
        { """{"value": 1, "minimum": 3, "maximum": 2, "digits": 1}""", "/minimum" },
        { """{"value": 1, "maximum": 2, "digits": 1, "count": 0}""", "/count" },
        { """{"value": 1, "maximum": 2, "digits": 1, "confidence": 1}""", "/confidence" },
        { """{"value": 1, "maximum": 2, "digits": 1, "reproducibility": 0}""", "/reproducibility" },
        { """{"value": 1, "maximum": 2, "digits": 1, "rule": "strict"}""", "/rule" },
        { """{"grade": "gasoline", "area": "NOWHERE", "date": "2026-05-10", "results": [{"quantity": "RVP", "value": {"value": 9, "unit": "psi"}, "method": "ASTM D5191"}]}""", "/area" },
        { """{"grade": "jet", "area": "EN228-A", "date": "2026-05-10", "results": [{"quantity": "RVP", "value": {"value": 9, "unit": "psi"}, "method": "ASTM D5191"}]}""", "/grade" },
        { """{"grade": "gasoline", "area": "EN228-A", "date": "2026-02-30", "results": [{"quantity": "RVP", "value": {"value": 9, "unit": "psi"}, "method": "ASTM D5191"}]}""", "/date" },
        { """{"grade": "gasoline", "area": "US-9.0", "date": "2026-05-10", "results": [{"quantity": "RVP", "value": {"value": 9, "unit": "psi"}, "method": "ASTM D5191"}]}""", "/pointOfCompliance" },
        { """{"grade": "gasoline", "area": "EN228-A", "date": "2026-05-10", "results": []}""", "/results" },
        { """{"grade": "gasoline", "area": "EN228-A", "date": "2026-05-10", "results": [{"quantity": "FOO", "value": {"value": 9, "unit": "psi"}, "method": "ASTM D5191"}]}""", "/results/0/quantity" },
        { """{"grade": "gasoline", "area": "EN228-A", "date": "2026-05-10", "results": [{"quantity": "DVPE", "value": 9, "method": "ASTM D5191"}]}""", "/results/0/value" },
        { """{"grade": "gasoline", "area": "EN228-A", "date": "2026-05-10", "results": [{"quantity": "DVPE", "value": {"value": 9, "unit": "psi"}, "method": "ASTM D1"}]}""", "/results/0/method" },
        { """{"grade": "gasoline", "area": "EN228-A", "date": "2026-05-10", "ethanolPercent": 101, "results": [{"quantity": "DVPE", "value": {"value": 9, "unit": "psi"}, "method": "ASTM D5191"}]}""", "/ethanolPercent" },
    };

    [Theory, MemberData(nameof(Mistakes))]
    public async Task Conformity_OneMistake_IsNamedAtItsPlace(string body, string place) =>
        Assert.Equal([place], (await scene.Program.Post(Path, body)).Refuses(400).Pointers);
}
