using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Evidence as JSON text, and its hash.</summary>
public static class EvidenceText
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(), new PlainDecimalConverter() },
    };

    public static string Of(Evidence evidence) => JsonSerializer.Serialize(evidence, Options);

    public static Evidence Read(string text) =>
        JsonSerializer.Deserialize<Evidence>(text, Options) ?? throw new InvalidOperationException("Empty evidence.");

    public static string Hash(string text) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    // Engines pad and cut trailing zeros of decimals: the text must not depend on the engine.
    private sealed class PlainDecimalConverter : JsonConverter<decimal>
    {
        public override decimal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDecimal();

        public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value / 1.0000000000000000000000000000m);
    }
}
