using System.Text.Json;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

/// <summary>The OpenAPI document against the running service.</summary>
[Collection(InterfaceTests.Name)]
public sealed class DocumentTests(InterfaceScene scene)
{
    private async Task<JsonElement> DocumentAsync() => (await scene.Program.Get("/openapi/v1.json")).Is(200).Json;

    [Fact]
    public async Task Document_EveryAddress_AnswersAsDescribed()
    {
        var document = await DocumentAsync();

        foreach (var path in document.GetProperty("paths").EnumerateObject())
        {
            foreach (var operation in path.Value.EnumerateObject())
            {
                var address = path.Name["/api/v1".Length..].Replace("{number}", "none", StringComparison.Ordinal).Replace("{code}", "none", StringComparison.Ordinal);
                var answer = await scene.Program.Send(new HttpMethod(operation.Name.ToUpperInvariant()), address, null);

                Assert.NotEqual(405, answer.Status);
                SchemaCheck.Answer(document, path.Name, operation.Name, answer);
            }
        }
    }

    [Fact]
    public async Task Document_GoodAnswers_FitTheirSchemas()
    {
        var document = await DocumentAsync();
        (string Path, string Body)[] asked =
        [
            ("/calculations/results", """{"method": "EN 13016-1", "readings": {"totalPressure": {"value": 70.0, "unit": "kPa"}}}"""),
            ("/calculations/results", """{"method": "ASTM D6378", "readings": {"totalPressure": {"value": 67.9, "unit": "kPa"}, "gasPressure": {"value": 2.7, "unit": "kPa"}}}"""),
            ("/calculations/gas-correction", GasCorrectionTests.Worked()),
            ("/calculations/precision", """{"method": "EN 13016-1", "values": [{"value": 70.0, "unit": "kPa"}]}"""),
            ("/calculations/conformity", """{"value": 9.05, "maximum": 9.0, "digits": 1}"""),
            ("/calculations/conformity", """{"grade": "gasoline", "area": "EN228-D1", "date": "2026-01-10", "results": [{"quantity": "DVPE", "value": {"value": 75, "unit": "kPa"}, "method": "EN 13016-1"}]}"""),
            ("/batches", $$"""{"number": "D-{{Guid.NewGuid():N}}", "grade": "G95", "destinations": [{"area": "EN228-A", "pointOfCompliance": "retail"}], "from": "2026-05-10", "until": "2026-05-31"}"""),
            ("/samples", """{"grade": "G95", "sampledAt": "2026-05-10T06:00:00Z", "sampledBy": "x", "containers": [{"container": "glass-bottle", "containerVolume": {"value": 1, "unit": "L"}}]}"""),
        ];

        foreach (var (path, body) in asked)
        {
            using var sent = JsonDocument.Parse(body);
            SchemaCheck.Request(document, $"/api/v1{path}", sent.RootElement);
            SchemaCheck.Answer(document, $"/api/v1{path}", "post", await scene.Program.Post(path, body));
        }
    }

    [Fact]
    public async Task Document_BadRequest_FitsNoSchema()
    {
        var document = await DocumentAsync();
        using var sent = JsonDocument.Parse("""{"method": "EN 13016-1", "readings": {"totalPressure": {"value": 70.0, "unit": "torr"}}}""");

        Assert.ThrowsAny<Exception>(() => SchemaCheck.Request(document, "/api/v1/calculations/results", sent.RootElement));
    }

    [Fact]
    public async Task Document_Itself_IsOpenApi31WithTheKey()
    {
        var document = await DocumentAsync();

        Assert.StartsWith("3.1", document.GetProperty("openapi").GetString(), StringComparison.Ordinal);
        Assert.Equal("bearer", document.GetProperty("components").GetProperty("securitySchemes").GetProperty("key").GetProperty("scheme").GetString());
        Assert.All(document.GetProperty("paths").EnumerateObject(), p => Assert.StartsWith("/api/v1/", p.Name, StringComparison.Ordinal));
        Assert.False(document.GetProperty("paths").GetProperty("/api/v1/certificates/check/{code}").GetProperty("get").TryGetProperty("security", out _));
    }
}
