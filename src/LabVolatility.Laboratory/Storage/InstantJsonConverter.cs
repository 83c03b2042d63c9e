using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace LabVolatility.Laboratory.Storage;

/// <summary>Instants inside JSON text: UTC with microseconds, like those in columns.</summary>
internal sealed class InstantJsonConverter : JsonConverter<DateTimeOffset>
{
    public override DateTimeOffset Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        DateTimeOffset.Parse(reader.GetString() ?? "", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    public override void Write(Utf8JsonWriter writer, DateTimeOffset value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Instant.Text(value));
}
