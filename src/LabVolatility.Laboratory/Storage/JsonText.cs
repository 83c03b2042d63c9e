using System.Text.Json;
using System.Text.Json.Serialization;

namespace LabVolatility.Laboratory.Storage;

/// <summary>How lists and records are written into a text column.</summary>
/// <remarks>Text on both engines: a binary column would reorder the members.</remarks>
internal static class JsonText
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.General)
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters = { new JsonStringEnumConverter(), new InstantJsonConverter() },
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    public static T Read<T>(string text) =>
        JsonSerializer.Deserialize<T>(text, Options) ?? throw new JsonException("The column holds the word null.");
}
