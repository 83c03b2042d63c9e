using System.Globalization;
using System.Text.Json;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

/// <summary>Triple expansion through the interface; the worked specimen is that of the published checks.</summary>
[Collection(InterfaceTests.Name)]
public sealed class GasCorrectionTests(InterfaceScene scene)
{
    private const string Path = "/calculations/gas-correction";
    private const string Results = "/calculations/results";
    private const string Sample = """{"kind": "gasoline", "container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}, "fillPercent": 75}""";

    private static readonly string[] Pressures = ["vaporPressureAtIntroduction", "gasPressureAtIntroduction", "gasPressure", "vaporPressure"];

    // VP 55.000, gas 2.5 kPa at 20 °C and 2.5 · 311/293.2 = 2.652 kPa at 37.8 °C, solubility 0.22.
    [Fact]
    public async Task GasCorrection_WorkedSpecimen_IsFoundAgain()
    {
        var answer = (await scene.Program.Post(Path, Worked())).Is(200).Json;

        Assert.Equal(
            ["vaporPressureAtIntroduction", "gasPressureAtIntroduction", "gasPressure", "vaporPressure", "gasSolubility", "findings"],
            answer.EnumerateObject().Select(m => m.Name));
        Assert.Equal([55.000m, 2.500m, 2.652m, 65.248m], Pressures.Select(name => Value(answer, name, 3)));
        Assert.Equal(0.220m, Rounding.ToPlaces(answer.GetProperty("gasSolubility").GetDecimal(), 3));
        Assert.Equal("kPa", answer.GetProperty("gasPressure").GetProperty("unit").GetString());
        Assert.Empty(answer.GetProperty("findings").EnumerateArray());
    }

    [Fact]
    public async Task GasCorrection_EqualPressures_LeaveNoGasAndNoSolubility()
    {
        var answer = (await scene.Program.Post(Path, Worked("57.5", "57.5", "57.5"))).Is(200).Json;

        Assert.Equal([57.5m, 0m, 0m, 67.9m], Pressures.Select(name => Value(answer, name, 3)));
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("gasSolubility").ValueKind);
    }

    [Fact]
    public async Task GasCorrection_SpecimenUnknown_GivesNoSolubility()
    {
        var answer = (await scene.Program.Post(Path, Worked().Replace("\"liquidVolume\": {\"value\": 1, \"unit\": \"mL\"},", "", StringComparison.Ordinal))).Is(200).Json;

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("gasSolubility").ValueKind);
        Assert.Equal(2.500m, Value(answer, "gasPressureAtIntroduction", 3));
    }

    [Theory]
    [InlineData("60.0", "57.0", "58.0", "67.9"), InlineData("60.0", "61.0", "57.0", "67.9"), InlineData("60.0", "59.0", "56.0", "67.9")]
    [InlineData("65.3431", "60.7967", "57.5000", "2.6")]
    public async Task GasCorrection_NoPhysicalSolution_Is422(string first, string second, string third, string total)
    {
        var answer = await scene.Program.Post(Path, Worked(first, second, third, total));

        Assert.NotEmpty(answer.Is(422).Json.GetProperty("detail").GetString()!);
    }

    [Fact]
    public async Task GasCorrection_TwoExpansions_AreTooFew() =>
        (await scene.Program.Post(Path, Worked().Replace(""", {"volume": {"value": 5.0, "unit": "mL"}, "pressure": {"value": 57.5000, "unit": "kPa"} }""", "", StringComparison.Ordinal))).Is(422);

    [Theory]
    [InlineData("\"expansions\": [", "\"expansions\": null, \"was\": [", "/expansions")]
    [InlineData("\"testTemperature\": {\"value\": 37.8", "\"testTemperature\": {\"value\": -300", "/testTemperature/value")]
    [InlineData("{\"value\": 1.8, \"unit\": \"mL\"}", "{\"value\": 1.8, \"unit\": \"kPa\"}", "/expansions/0/volume/unit")]
    [InlineData("\"liquidVolume\"", "\"liquid\"", "/liquid")]
    [InlineData("\"totalPressure\": {\"value\": 67.9", "\"totalPressure\": {\"value\": -67.9", "/totalPressure/value")]
    public async Task GasCorrection_BrokenRule_IsNamedAtItsPlace(string was, string becomes, string place) =>
        Assert.Contains(place, (await scene.Program.Post(Path, Worked().Replace(was, becomes, StringComparison.Ordinal))).Is(400).Pointers);

    // 67.9 − 2.7 − 1.005 = 64.195 kPa for 1 L.
    [Fact]
    public async Task Results_GasAsGiven_PredictsTheDvpe()
    {
        var answer = (await scene.Program.Post(Results, Determination("\"gasPressure\": {\"value\": 2.7, \"unit\": \"kPa\"}"))).Is(200).Json;

        Assert.Equal(["Ptot", "Pgas", "VP4", "DVPE"], answer.GetProperty("results").EnumerateArray().Select(r => r.GetProperty("quantity").GetString()));
        Assert.Equal(("64.195", "64.2"), (answer.GetProperty("results")[3].GetProperty("value").GetRawText(), answer.GetProperty("results")[3].GetProperty("reported").GetString()));
        Assert.Empty(answer.GetProperty("findings").EnumerateArray());
    }

    [Fact]
    public async Task Results_Expansions_GiveWhatTheGasCorrectionGives()
    {
        var corrected = (await scene.Program.Post(Path, Worked())).Is(200).Json;

        var answer = (await scene.Program.Post(Results, Determination(
            $"\"introductionTemperature\": {{\"value\": 20, \"unit\": \"degC\"}}, {Expansions("65.3431", "60.7967", "57.5000")}"))).Is(200).Json;

        Assert.Equal(
            [Value(corrected, "gasPressure", 20), Value(corrected, "vaporPressure", 20)],
            answer.GetProperty("results").EnumerateArray().Skip(1).Take(2).Select(r => Rounding.ToPlaces(r.GetProperty("value").GetDecimal(), 20)));
    }

    [Fact]
    public async Task Results_European_HasNoDvpeUntilTheLaboratoryEntersItsCorrelation()
    {
        var answer = (await scene.Program.Post(Results, Determination("\"gasPressure\": {\"value\": 2.7, \"unit\": \"kPa\"}", "EN 13016-3"))).Is(200).Json;

        Assert.Equal(["Ptot", "Pgas", "VP4"], answer.GetProperty("results").EnumerateArray().Select(r => r.GetProperty("quantity").GetString()));
        Assert.Equal(["no-correlation"], answer.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()));
    }

    [Theory]
    [InlineData("", "/readings/gasPressure", 400)]
    [InlineData("\"gasPressure\": {\"value\": 2.7, \"unit\": \"kPa\"}, \"expansions\": [{\"volume\": {\"value\": 1, \"unit\": \"mL\"}, \"pressure\": {\"value\": 1, \"unit\": \"kPa\"}}]", "/readings/expansions", 400)]
    [InlineData("\"expansions\": [{\"volume\": {\"value\": 1, \"unit\": \"mL\"}, \"pressure\": {\"value\": 1, \"unit\": \"kPa\"}}]", "/readings/introductionTemperature", 400)]
    [InlineData("\"introductionTemperature\": {\"value\": 20, \"unit\": \"degC\"}, \"expansions\": [{\"volume\": {\"value\": 1, \"unit\": \"mL\"}, \"pressure\": {\"value\": 1, \"unit\": \"kPa\"}}]", "", 422)]
    public async Task Results_WithoutAUsableGasPart_AreRefused(string gas, string place, int status)
    {
        var answer = (await scene.Program.Post(Results, Determination(gas))).Is(status);

        if (place.Length > 0)
            Assert.Contains(place, answer.Pointers);
    }

    // EPA and CARB rest on ASTM D5191.
    [Theory]
    [InlineData("EPA"), InlineData("CARB"), InlineData("EN")]
    public async Task Results_OtherAuthority_IsNoSilentFallBack(string authority) =>
        Assert.Contains("/authority", (await scene.Program.Post(Results, Determination("\"gasPressure\": {\"value\": 2.7, \"unit\": \"kPa\"}").Replace("\"method\"", $"\"authority\": \"{authority}\", \"method\"", StringComparison.Ordinal))).Is(400).Pointers);

    internal static string Worked(string first = "65.3431", string second = "60.7967", string third = "57.5000", string total = "67.9") => string.Create(
        CultureInfo.InvariantCulture,
        $$"""{{{Expansions(first, second, third)}}, "liquidVolume": {"value": 1, "unit": "mL"}, "introductionTemperature": {"value": 20, "unit": "degC"}, "testTemperature": {"value": 37.8, "unit": "degC"}, "totalPressure": {"value": {{total}}, "unit": "kPa"} }""");

    private static string Expansions(string first, string second, string third) =>
        $$"""
        "expansions": [{"volume": {"value": 1.8, "unit": "mL"}, "pressure": {"value": {{first}}, "unit": "kPa"} }, {"volume": {"value": 2.6, "unit": "mL"}, "pressure": {"value": {{second}}, "unit": "kPa"} }, {"volume": {"value": 5.0, "unit": "mL"}, "pressure": {"value": {{third}}, "unit": "kPa"} }]
        """.Trim();

    private static string Determination(string gas, string method = "ASTM D6378") =>
        "{\"method\": \"" + method + "\", \"readings\": {\"totalPressure\": {\"value\": 67.9, \"unit\": \"kPa\"}, \"temperature\": {\"value\": 37.8, \"unit\": \"degC\"}, \"vaporLiquidRatio\": 4.0"
        + (gas.Length == 0 ? "" : ", " + gas) + "}, \"sample\": " + Sample + "}";

    private static decimal Value(JsonElement answer, string name, int places) =>
        Rounding.ToPlaces(answer.GetProperty(name).GetProperty("value").GetDecimal(), places);
}
