using System.Text;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

[Collection(InterfaceTests.Name)]
public sealed class BodyTests(InterfaceScene scene)
{
    private const string Path = "/calculations/results";

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("\"text\"")]
    [InlineData("{\"method\": NaN}")]
    [InlineData("{\"method\": Infinity}")]
    [InlineData("{\"method\": 01}")]
    [InlineData("{\"method\": \"\\ud800\"}")]
    [InlineData("{\"\\ud800\": 1}")]
    [InlineData("{\"method\": \"ASTM D5191\",}")]
    [InlineData("{\"method\": \"ASTM D5191\"} {}")]
    [InlineData("{/* */}")]
    public async Task Body_WrongJson_IsRefused(string body) => (await scene.Program.Post(Path, body)).Refuses(400);

    [Fact]
    public async Task Body_TooDeep_IsRefused() =>
        (await scene.Program.Post(Path, new string('[', 40) + new string(']', 40))).Refuses(400);

    [Fact]
    public async Task Body_NotUtf8_IsRefused()
    {
        using var content = new ByteArrayContent([0x7B, 0x22, 0xFF, 0x22, 0x3A, 0x31, 0x7D]);
        content.Headers.TryAddWithoutValidation("Content-Type", "application/json");

        (await scene.Program.Send(HttpMethod.Post, Path, content)).Refuses(400);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/xml")]
    [InlineData("application/json; charset=iso-8859-1")]
    public async Task Body_OtherContentType_IsRefused(string type)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes("{}"));
        content.Headers.TryAddWithoutValidation("Content-Type", type);

        (await scene.Program.Send(HttpMethod.Post, Path, content)).Refuses(415);
    }

    [Fact]
    public async Task Body_TooLarge_IsRefused() =>
        (await scene.Program.Post(Path, $"{{\"method\": \"{new string('x', 1_000_001)}\"}}")).Refuses(413);

    [Theory]
    [InlineData("GET", "/calculations/nothing", 404)]
    [InlineData("POST", "/calculations/curve", 404)]
    [InlineData("GET", "/calculations/results", 405)]
    [InlineData("DELETE", "/samples/26-0001", 405)]
    [InlineData("GET", "/samples/26-9999-X", 404)]
    [InlineData("GET", "/batches/none", 404)]
    [InlineData("GET", "/batches/none/assessment", 404)]
    [InlineData("GET", "/certificates/none", 404)]
    [InlineData("GET", "/certificates/check/7H2K-9QXB-41TN", 404)]
    [InlineData("GET", "/samples/%07", 404)]
    public async Task Address_NotThere_IsAProblem(string method, string path, int status) =>
        (await scene.Program.Send(new HttpMethod(method), path, null)).Refuses(status);

    [Fact]
    public async Task Body_Damaged_NeverBreaksTheProgram()
    {
        string[] good =
        [
            """{"method": "ASTM D5191", "readings": {"totalPressure": {"value": 70.0, "unit": "kPa"}, "temperature": {"value": 37.8, "unit": "degC"}}, "sample": {"kind": "gasoline", "fillPercent": 75}}""",
            """{"method": "ASTM D5191", "values": [{"value": 70.0, "unit": "kPa"}, {"value": 70.4, "unit": "kPa"}], "repeatability": {"value": 1, "unit": "kPa"}}""",
            """{"value": {"value": 59.9, "unit": "kPa"}, "maximum": {"value": 60.0, "unit": "kPa"}, "digits": 1, "count": 2, "confidence": 0.95, "rule": "guarded"}""",
            """{"grade": "gasoline", "area": "US-9.0", "pointOfCompliance": "terminal", "date": "2026-05-10", "ethanolPercent": 9.8, "results": [{"quantity": "RVP", "value": {"value": 9.9, "unit": "psi"}, "method": "ASTM D5191", "correlation": null}]}""",
        ];
        string[] paths = ["/calculations/results", "/calculations/precision", "/calculations/conformity", "/calculations/conformity"];
        string[] bits = ["null", "-1", "1e28", "79228162514264337593543950335", "-0", "0.00000000000000000000000000001", "\"\"", "[]", "{}", "true", "\"psi\"", "\"kPa\"", "{\"value\": 1, \"unit\": \"psi\"}", ":", "\"", "\\u0000"];
        var random = new Random(26);
        for (var i = 0; i < 400; i++)
        {
            var which = random.Next(good.Length);
            var text = good[which];
            var tokens = System.Text.RegularExpressions.Regex.Matches(text, "\"[^\"]*\"|-?[0-9.]+|null");
            var token = tokens[random.Next(tokens.Count)];
            var damaged = text[..token.Index] + bits[random.Next(bits.Length)] + text[(token.Index + token.Length)..];

            var answer = await scene.Program.Post(paths[which], damaged);

            Assert.True(answer.Status is 200 or 400 or 422, $"{answer.Status} for {damaged}: {answer.Text}");
        }
    }
}
