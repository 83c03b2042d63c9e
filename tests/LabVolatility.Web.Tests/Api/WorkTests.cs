using System.Text.Json;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

[Collection(InterfaceTests.Name)]
public sealed class WorkTests(InterfaceScene scene)
{
    private static readonly string[] AreasOfTheContract = ["US-9.0", "US-7.8", "US-RFG", "EN228-A", "EN228-C1", "EN228-F1", "EN228-A-W", "D4814-AA", "D4814-E"];

    private async Task<string> BatchAsync()
    {
        var number = $"B-{Guid.NewGuid():N}"[..12];
        (await scene.Program.Post("/batches", $$"""{"number": "{{number}}", "grade": "G95", "tank": "T-7", "volume": {"value": 5000, "unit": "m3"}, "ethanolPercent": 9.8, "destinations": [{"area": "US-9.0", "pointOfCompliance": "terminal"}], "from": "2026-05-10", "until": "2026-05-31"}""")).Is(201);
        return number;
    }

    private async Task<string> SampleAsync(string batch, int containers = 1)
    {
        var bottles = string.Join(", ", Enumerable.Repeat("""{"container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}, "fillPercent": 75, "temperature": {"value": 12, "unit": "degC"}, "seal": "S-1"}""", containers));
        var answer = await scene.Program.Post("/samples", $$"""{"grade": "G95", "batch": "{{batch}}", "level": "middle", "sampledAt": "2026-05-10T06:00:00+00:00", "sampledBy": "tank crew", "receivedAt": "2026-05-10T06:30:00Z", "containers": [{{bottles}}], "note": "from the interface"}""");
        var number = answer.Is(201).Json.GetProperty("number").GetString()!;
        Assert.Equal($"/api/v1/samples/{number}", answer.Headers["Location"]);
        return number;
    }

    private Task<Answered> DetermineAsync(string sample, string externalId, string total = "9.83", string by = "\"i.fenwick\"", int container = 1, string instrument = InterfaceScene.Tester) =>
        scene.Program.Post($"/samples/{sample}/determinations", $$"""{"method": "ASTM D5191", "procedure": null, "containerNumber": {{container}}, "instrument": "{{instrument}}", "measuredAt": "2026-05-10T07:00:00Z", "measuredBy": {{by}}, "readings": {"totalPressure": {"value": {{total}}, "unit": "psi"}, "temperature": {"value": 37.8, "unit": "degC"}, "vaporLiquidRatio": 4.0}, "handling": {"chilledTo": {"value": 0.5, "unit": "degC"}, "airSaturated": true}, "externalId": "{{externalId}}"}""");

    [Fact]
    public async Task Work_SampleToAssessment_HoldsTogether()
    {
        var batch = await BatchAsync();
        var sample = await SampleAsync(batch);

        var determination = await DetermineAsync(sample, $"run-{batch}");

        var results = determination.Is(201).Json.GetProperty("results").EnumerateArray().ToList();
        Assert.Equal(["Ptot", "DVPE", "RVP"], results.Select(r => r.GetProperty("quantity").GetString()));
        // 0.956 · 9.83 − 0.347 = 9.05048 psi, and 1 psi = 6.894757293168… kPa: no answer comes in the reading's unit.
        Assert.Equal(("62.4", "kPa"), (results[2].GetProperty("reported").GetString(), results[2].GetProperty("unit").GetString()));
        Assert.Equal(62.40086m, decimal.Round(results[2].GetProperty("value").GetDecimal(), 5, MidpointRounding.ToEven));
        var assessment = (await scene.Program.Get($"/batches/{batch}/assessment")).Is(200).Json;
        Assert.Equal("conforms", assessment.GetProperty("outcome").GetString());
        Assert.Equal("10", assessment.GetProperty("limits")[0].GetProperty("effectiveMaximum").GetProperty("value").GetRawText());
        Assert.Equal("9.1", assessment.GetProperty("limits")[0].GetProperty("compared").GetString());
        var read = (await scene.Program.Get($"/samples/{sample}")).Is(200).Json;
        var stored = read.GetProperty("determinations")[0];
        Assert.Equal("67.8", stored.GetProperty("results")[1].GetProperty("reported").GetString());
        Assert.Equal("i.fenwick", stored.GetProperty("measuredBy").GetString());
        Assert.Equal("""{"value":12,"unit":"degC"}""", read.GetProperty("containers")[0].GetProperty("temperature").GetRawText());
        Assert.Equal([sample], (await scene.Program.Get($"/batches/{batch}")).Is(200).Json.GetProperty("samples").EnumerateArray().Select(s => s.GetString()));
    }

    // ISO/IEC 17025 7.4.3: whether to go on is decided, and a program can't decide.
    [Fact]
    public async Task Sample_ThatArrivedNotAsExpected_WaitsForAPerson()
    {
        var answer = await scene.Program.Post("/samples", """{"grade": "G95", "sampledAt": "2026-05-10T06:00:00Z", "sampledBy": "x", "receivedAt": "2026-05-10T06:30:00Z", "containers": [{"container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}, "fillPercent": 60}]}""");

        Assert.Equal("announced", answer.Is(201).Json.GetProperty("state").GetString());
        Assert.Contains("60 % full", answer.Json.GetProperty("note").GetString(), StringComparison.Ordinal);
        Assert.Equal("60", answer.Json.GetProperty("containers")[0].GetProperty("fillPercent").GetRawText());
    }

    [Fact]
    public async Task Determination_SameExternalIdAgain_StoresNothingNew()
    {
        var sample = await SampleAsync(await BatchAsync());
        var first = await DetermineAsync(sample, $"run-{sample}");

        var again = await DetermineAsync(sample, $"run-{sample}", total: "8.00");
        var elsewhere = await DetermineAsync("S0000000", $"run-{sample}");

        Assert.Equal(first.Is(201).Text, again.Is(200).Text);
        Assert.Equal(sample, elsewhere.Is(200).Json.GetProperty("sample").GetString());
        Assert.Single((await scene.Program.Get($"/samples/{sample}")).Json.GetProperty("determinations").EnumerateArray());
    }

    [Fact]
    public async Task Determination_WithoutOperator_DoesNotCount()
    {
        var sample = await SampleAsync(await BatchAsync());

        (await DetermineAsync(sample, $"run-{sample}", by: "null")).Is(201);

        var read = (await scene.Program.Get($"/samples/{sample}")).Json.GetProperty("determinations")[0];
        Assert.Equal("null", read.GetProperty("measuredBy").GetRawText());
        Assert.NotEmpty(read.GetProperty("doesNotCount").GetString()!);
    }

    [Fact]
    public async Task Determination_AgainstARule_IsRefusedAsAtTheBench()
    {
        var sample = await SampleAsync(await BatchAsync(), containers: 4);
        (await DetermineAsync(sample, $"first-{sample}")).Is(201);

        // The container has served its one test, and the sample has the one result that its plan asks for.
        Assert.Equal(["/containerNumber"], (await DetermineAsync(sample, $"second-{sample}")).Refuses(400).Pointers);
        (await DetermineAsync(sample, $"third-{sample}", total: "40", container: 2)).Refuses(400);
        (await DetermineAsync(sample, $"fourth-{sample}", by: "\"nobody\"", container: 2)).Refuses(400);
        (await DetermineAsync(sample, $"fifth-{sample}", instrument: "VP-9", container: 2)).Refuses(400);
        (await DetermineAsync("26-0000-0", "sixth")).Refuses(404);
    }

    [Fact]
    public async Task Results_PageByPage_ListWhatWasReported()
    {
        var sample = await SampleAsync(await BatchAsync());
        (await DetermineAsync(sample, $"run-{sample}")).Is(201);

        var json = (await scene.Program.Get("/results?grade=G95&tank=T-7&quantity=RVP&from=2026-05-10&until=2026-05-10")).Is(200).Json;
        var csv = await scene.Program.Send(HttpMethod.Get, "/results?quantity=RVP", null, "text/csv");

        Assert.Contains(json.GetProperty("results").EnumerateArray(), r => r.GetProperty("sample").GetString() == sample && r.GetProperty("reported").GetString() == "62.4");
        Assert.NotEmpty((await scene.Program.Get("/results?from=2026-05-10T07:00:00Z&until=2026-05-10T09:00:00%2B02:00")).Is(200).Json.GetProperty("results").EnumerateArray());
        Assert.Empty((await scene.Program.Get("/results?from=2026-05-10T07:00:01Z")).Is(200).Json.GetProperty("results").EnumerateArray());
        Assert.All(json.GetProperty("results").EnumerateArray(), r => Assert.Equal("RVP", r.GetProperty("quantity").GetString()));
        Assert.Equal("text/csv", csv.Is(200).Type);
        Assert.StartsWith("sample,grade,tank,batch,", csv.Text.TrimStart('\uFEFF'), StringComparison.Ordinal);
        Assert.Contains($"{sample},G95,T-7,", csv.Text, StringComparison.Ordinal);
        Assert.Equal(["/after"], (await scene.Program.Get("/results?after=nonsense")).Refuses(400).Pointers);
        Assert.Equal(["/from"], (await scene.Program.Get("/results?from=2026-02-30")).Refuses(400).Pointers);
        Assert.Equal(["/grades"], (await scene.Program.Get("/results?grades=x")).Refuses(400).Pointers);
    }

    [Fact]
    public async Task Batch_SameNumberAgain_ConflictsWithWhatIsThere()
    {
        var batch = await BatchAsync();

        var again = await scene.Program.Post("/batches", $$"""{"number": "{{batch}}", "grade": "G95", "destinations": [{"area": "US-9.0", "pointOfCompliance": "terminal"}], "from": "2026-05-10", "until": "2026-05-31"}""");

        Assert.Equal(batch, again.Refuses(409).Json.GetProperty("inForce").GetProperty("number").GetString());
    }

    [Theory]
    [InlineData("/batches", """{"number": "B", "grade": "G95", "destinations": [{"area": "MARS", "pointOfCompliance": "terminal"}], "from": "2026-05-10", "until": "2026-05-31"}""", "/destinations/0/area")]
    [InlineData("/batches", """{"number": "B/7", "grade": "G95", "destinations": [{"area": "US-9.0", "pointOfCompliance": "terminal"}], "from": "2026-05-10", "until": "2026-05-31"}""", "/number")]
    [InlineData("/batches", """{"number": "..", "grade": "G95", "destinations": [{"area": "US-9.0", "pointOfCompliance": "terminal"}], "from": "2026-05-10", "until": "2026-05-31"}""", "/number")]
    [InlineData("/batches", """{"number": "B", "grade": "G95", "destinations": [{"area": "US-9.0", "pointOfCompliance": "terminal"}, {"area": "US-9.0", "pointOfCompliance": "terminal"}], "from": "2026-05-10", "until": "2026-05-31"}""", "/destinations/1")]
    [InlineData("/batches", """{"number": "B", "grade": "G95", "destinations": [], "from": "2026-05-10", "until": "2026-05-31"}""", "/destinations")]
    [InlineData("/batches", """{"number": "B", "grade": "G95", "destinations": [{"area": "US-9.0", "pointOfCompliance": "terminal"}], "from": "2026-05-10", "until": "2026-05-09"}""", "/until")]
    [InlineData("/samples", """{"grade": "G95", "sampledAt": "2026-05-10T06:00:00", "sampledBy": "x", "containers": [{"container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}}]}""", "/sampledAt")]
    [InlineData("/samples", """{"grade": "G95", "sampledAt": "2026-05-11T06:00:00Z", "sampledBy": "x", "containers": [{"container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}}]}""", "/sampledAt")]
    [InlineData("/samples", """{"grade": "G00", "sampledAt": "2026-05-10T06:00:00Z", "sampledBy": "x", "containers": [{"container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}}]}""", "/grade")]
    [InlineData("/samples", """{"grade": "G95", "sampledAt": "2026-05-10T06:00:00Z", "sampledBy": "x", "containers": [{"container": "glass-bottle", "containerVolume": {"value": 0, "unit": "L"}}]}""", "/containers/0/containerVolume/value")]
    public async Task Work_OneMistake_IsNamedAtItsPlace(string path, string body, string place) =>
        Assert.Equal([place], (await scene.Program.Post(path, body)).Refuses(400).Pointers);

    [Fact]
    public async Task Records_AfterAllThis_AreIntact()
    {
        await SampleAsync(await BatchAsync());

        var json = (await scene.Program.Get("/records/check")).Is(200).Json;

        Assert.Equal(JsonValueKind.True, json.GetProperty("intact").ValueKind);
        Assert.True(json.GetProperty("records").GetInt64() > 10);
        Assert.Equal("null", json.GetProperty("firstBroken").GetRawText());
        Assert.Equal(["intact", "records", "head", "firstBroken"], json.EnumerateObject().Select(m => m.Name));
    }

    [Fact]
    public async Task Catalogue_Areas_AreThoseOfTheContract()
    {
        var codes = (await scene.Program.Get("/catalogue/areas")).Is(200).Json.GetProperty("areas").EnumerateArray().Select(a => a.GetProperty("code").GetString()).ToList();

        Assert.Empty(AreasOfTheContract.Except(codes));
        Assert.Equal(["/area"], (await scene.Program.Get("/catalogue/limits?area=MARS")).Refuses(400).Pointers);
        Assert.Empty((await scene.Program.Get("/catalogue/limits?area=US-9.0&date=2026-01-10")).Is(200).Json.GetProperty("limits").EnumerateArray());
        Assert.NotEmpty((await scene.Program.Get("/catalogue/limits?grade=gasoline")).Is(200).Json.GetProperty("limits").EnumerateArray());
        Assert.Contains((await scene.Program.Get("/catalogue/grades")).Is(200).Json.GetProperty("grades").EnumerateArray(), g => g.GetProperty("code").GetString() == "G95");
    }
}
