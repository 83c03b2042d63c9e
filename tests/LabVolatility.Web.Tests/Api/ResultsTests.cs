using System.Globalization;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

[Collection(InterfaceTests.Name)]
public sealed class ResultsTests(InterfaceScene scene)
{
    private const string Path = "/calculations/results";

    private const string Sample = """{"kind": "gasoline", "container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}, "fillPercent": 75, "airSaturated": true, "hazy": false, "phases": 1}""";

    // ASTM D5191-22, equation 1; 40 CFR 1090.1355(a); 13 CCR 2297: worked by hand.
    public static TheoryData<string, string, string, string, string> Printed => new()
    {
        { "70.0", "kPa", "ASTM", "63.77", "63.8" },
        { "70.0", "kPa", "EPA", "64.53", "64.5" },
        { "70.0", "kPa", "CARB", "63.11", "63.1" },
        { "10.00", "psi", "ASTM", "9.102", "9.10" },
        { "10.00", "psi", "EPA", "9.213", "9.21" },
        { "10.00", "psi", "CARB", "9.005", "9.00" },
        { "7.00", "psi", "EPA", "6.345", "6.34" },
        { "4.50", "psi", "EPA", "3.955", "3.96" },
    };

    [Theory, MemberData(nameof(Printed))]
    public async Task Results_PrintedEquation_GiveItsValueExactly(string total, string unit, string authority, string value, string reported)
    {
        var answer = await scene.Program.Post(Path, $$"""{"method": "ASTM D5191", "procedure": null, "readings": {"totalPressure": {"value": {{total}}, "unit": "{{unit}}"}, "temperature": {"value": 37.8, "unit": "degC"}, "vaporLiquidRatio": 4.0}, "sample": {{Sample}}, "authority": "{{authority}}", "reportUnit": "{{unit}}"}""");

        var result = answer.Is(200).Json.GetProperty("results")[1];
        Assert.Equal(value, result.GetProperty("value").GetRawText());
        Assert.Equal(reported, result.GetProperty("reported").GetString());
        Assert.Equal(unit, result.GetProperty("unit").GetString());
        Assert.Empty(answer.Json.GetProperty("findings").EnumerateArray());
    }

    [Fact]
    public async Task Results_AnyReading_EqualCore()
    {
        var random = new Random(51912022);
        Assert.True(TestMethods.TryFind("ASTM D5191", out var method));
        for (var i = 0; i < 60; i++)
        {
            var (unit, authority) = (PressureUnits.All[random.Next(8)], method.Authorities[random.Next(3)]);
            var total = AbsolutePressure.From(Rounding.ToPlaces((decimal)(random.NextDouble() * 150), 4), PressureUnit.Kilopascal);
            var sent = AbsolutePressure.From(Rounding.ToPlaces(total.In(unit), 4), unit);
            var core = Measurement.Evaluate(
                method, new Readings { TotalPressure = sent },
                new SampleCondition(SampleKind.Gasoline, ContainerKind.GlassBottle, Volume.From(1, VolumeUnit.Litre), 75, true), authority, unit);

            var answer = await scene.Program.Post(Path, string.Create(CultureInfo.InvariantCulture,
                $$"""{"method": "ASTM D5191", "readings": {"totalPressure": {"value": {{sent.Value}}, "unit": "{{unit.Symbol()}}"} }, "sample": {{Sample}}, "authority": "{{authority.Text()}}", "reportUnit": "{{unit.Symbol()}}"}"""));

            var results = answer.Is(200).Json.GetProperty("results").EnumerateArray().ToList();
            Assert.Equal(core.Results.Select(r => (r.Quantity, r.Value, r.Reported)), results.Select(r => (r.GetProperty("quantity").GetString()!, r.GetProperty("value").GetDecimal(), r.GetProperty("reported").GetString()!)));
            Assert.Equal(core.Findings.Select(f => f.Code), answer.Json.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()));
        }
    }

    [Fact]
    public async Task Results_AnswersMembers_AreThoseOfTheContract()
    {
        var answer = await scene.Program.Post(Path, $$"""{"method": "EN 13016-1", "readings": {"totalPressure": {"value": 70.0, "unit": "kPa"} }, "sample": {{Sample}} }""");

        Assert.Equal(["method", "edition", "results", "repeatability", "reproducibility", "findings"], answer.Is(200).Json.EnumerateObject().Select(m => m.Name));
        Assert.Equal(
            ["quantity", "value", "reported", "unit", "suffix", "correlation", "equation", "source", "status"],
            answer.Json.GetProperty("results")[0].EnumerateObject().Select(m => m.Name));
        Assert.Equal("1.5", answer.Json.GetProperty("repeatability").GetProperty("value").GetRawText());
        Assert.Equal("3", answer.Json.GetProperty("reproducibility").GetProperty("value").GetRawText());
    }

    [Theory]
    [InlineData("\"fillPercent\": 69", "fill-level", "blocking")]
    [InlineData("\"fillPercent\": 81", "fill-level", "warning")]
    [InlineData("\"hazy\": true", "hazy", "warning")]
    [InlineData("\"phases\": 2", "two-phases", "blocking")]
    [InlineData("\"airSaturated\": false", "not-air-saturated", "blocking")]
    public async Task Results_SampleAtFault_IsFound(string member, string code, string severity)
    {
        var answer = await scene.Program.Post(Path, $$"""{"method": "EN 13016-1", "readings": {"totalPressure": {"value": 70.0, "unit": "kPa"} }, "sample": {"kind": "gasoline", "container": "glass-bottle", {{member}} } }""");

        var finding = answer.Is(200).Json.GetProperty("findings").EnumerateArray().Single(f => f.GetProperty("code").GetString() == code);
        Assert.Equal(severity, finding.GetProperty("severity").GetString());
        Assert.Equal(2, answer.Json.GetProperty("results").GetArrayLength());
    }

    [Fact]
    public async Task Results_HazySample_HaveSuffixAndNoPrecision()
    {
        var answer = await scene.Program.Post(Path, """{"method": "EN 13016-1", "readings": {"totalPressure": {"value": 70.0, "unit": "kPa"}}, "sample": {"kind": "gasoline", "container": "glass-bottle", "hazy": true}}""");

        Assert.All(answer.Is(200).Json.GetProperty("results").EnumerateArray(), r => Assert.Equal("H", r.GetProperty("suffix").GetString()));
        Assert.Equal("null", answer.Json.GetProperty("repeatability").GetRawText());
    }

    [Fact]
    public async Task Results_NothingSaidOfTheSample_IsRemarked()
    {
        var answer = await scene.Program.Post(Path, """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70.0, "unit": "kPa"}}}""");

        Assert.Contains(answer.Is(200).Json.GetProperty("findings").EnumerateArray(), f => f.GetProperty("message").GetString()!.Contains("supposed", StringComparison.Ordinal));
    }

    // Each line: what is changed in a good request, and the place of the mistake.
    public static TheoryData<string, string> Mistakes => new()
    {
        { """{"readings": {"totalPressure": {"value": 70, "unit": "kPa"}}}""", "/method" },
        { """{"method": "ASTM D9999", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}}""", "/method" },
        { """{"method": "ASTM D6377", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}}""", "/method" },
        { """{"method": null, "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}}""", "/method" },
        { """{"method": "ASTM D5191", "procedure": "A", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}}""", "/procedure" },
        { """{"method": "ASTM D5191"}""", "/readings" },
        { """{"method": "ASTM D5191", "readings": {}}""", "/readings/totalPressure" },
        { """{"method": "ASTM D5191", "readings": []}""", "/readings" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": 70}}""", "/readings/totalPressure" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70}}}""", "/readings/totalPressure/unit" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "KPA"}}}""", "/readings/totalPressure/unit" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": "70", "unit": "kPa"}}}""", "/readings/totalPressure/value" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": -0.1, "unit": "kPa"}}}""", "/readings/totalPressure/value" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 1e400, "unit": "kPa"}}}""", "/readings/totalPressure/value" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}, "temperature": {"value": 0, "unit": "K"}}}""", "/readings/temperature/value" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}, "temperature": {"value": -273.15, "unit": "degC"}}}""", "/readings/temperature/value" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}, "vaporLiquidRatio": 0}}""", "/readings/vaporLiquidRatio" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}, "expansions": []}}""", "/readings/expansions" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}, "totalpressure": 1}}""", "/readings/totalpressure" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}, "a/b~c": 1}}""", "/readings/a~1b~0c" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "sample": {"kind": "petrol"}}""", "/sample/kind" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "sample": {"container": "jar"}}""", "/sample/container" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "sample": {"fillPercent": 101}}""", "/sample/fillPercent" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "sample": {"phases": 1.5}}""", "/sample/phases" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "sample": {"hazy": "no"}}""", "/sample/hazy" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "authority": "EN"}""", "/authority" },
        { """{"method": "EN 13016-1", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "authority": "EPA"}""", "/authority" },
        { """{"method": "EN 13016-1", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "authority": "CARB"}""", "/authority" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "reportUnit": "torr"}""", "/reportUnit" },
        { """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}, "reidEquivalent": true}""", "/reidEquivalent" },
        { """{"method": "ASTM D5191", "method": "ASTM D5191", "readings": {"totalPressure": {"value": 70, "unit": "kPa"}}}""", "/method" },
    };

    [Theory, MemberData(nameof(Mistakes))]
    public async Task Results_OneMistake_IsNamedAtItsPlace(string body, string place)
    {
        var answer = await scene.Program.Post(Path, body);

        Assert.Equal([place], answer.Refuses(400).Pointers);
    }

    [Fact]
    public async Task Results_SeveralMistakes_AreNamedAtOnce()
    {
        var answer = await scene.Program.Post(Path, """{"method": "ASTM D5191", "procedure": "A", "readings": {"totalPressure": {"value": -1, "unit": "kPa"}, "temperature": {"value": 20, "unit": "C"}}, "authority": "EN", "extra": 1}""");

        Assert.Equal(["/authority", "/extra", "/procedure", "/readings/temperature/unit", "/readings/totalPressure/value"], answer.Refuses(400).Pointers);
    }
}
