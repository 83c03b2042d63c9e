using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Laboratory.Records;

/// <summary>JSON of which there is one text for one content, on both engines and after every round trip.</summary>
/// <remarks>
/// Members in ordinal order of their names; no white space; text in Unicode form NFC, escaped as in RFC 8785 3.2.2.2;
/// decimals without an exponent and without trailing zeros; instants in UTC with six digits of the second; bytes as
/// "sha256:" with their hash in lower-case hexadecimal.
/// </remarks>
internal static class CanonicalText
{
    public const string Null = "null";

    public static string Of(RecordedMember member, object? value) => value switch
    {
        null => Null,
        _ when member.Kind is MemberKind.Json => OfJson(JsonTextOf(member, value)),
        Enum name => OfText(name.ToString()),
        string text => OfText(text),
        int or long => Convert.ToString(value, CultureInfo.InvariantCulture) ?? Null,
        decimal number => OfDecimal(number),
        bool yes => yes ? "true" : "false",
        DateTimeOffset at => OfInstant(at),
        DateOnly day => OfDate(day),
        Guid id => OfIdentifier(id),
        byte[] bytes => OfBytes(bytes),
        _ => throw new InvalidOperationException($"Records have no text for {member.Name}."),
    };

    public static string OfDecimal(decimal value) => Rounding.Plain(value);

    public static string OfInstant(DateTimeOffset value) => $"\"{Instant.Text(value)}\"";

    public static string OfDate(DateOnly value) => $"\"{value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}\"";

    public static string OfIdentifier(Guid value) => $"\"{value:D}\"";

    public static string OfBytes(byte[] value) => $"\"sha256:{Convert.ToHexStringLower(SHA256.HashData(value))}\"";

    public static string OfText(string value)
    {
        var text = new StringBuilder(value.Length + 2).Append('"');
        foreach (var character in value.IsNormalized() ? value : value.Normalize())
        {
            _ = character switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                '\b' => text.Append("\\b"),
                '\t' => text.Append("\\t"),
                '\n' => text.Append("\\n"),
                '\f' => text.Append("\\f"),
                '\r' => text.Append("\\r"),
                < ' ' => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)character:x4}"),
                _ => text.Append(character),
            };
        }

        return text.Append('"').ToString();
    }

    /// <exception cref="JsonException">It is no JSON.</exception>
    public static string OfJson(string json)
    {
        using var document = JsonDocument.Parse(json);
        var text = new StringBuilder(json.Length);
        Append(text, document.RootElement);
        return text.ToString();
    }

    public static void AppendMember(StringBuilder text, string name, string value)
    {
        if (text[^1] != '{')
            text.Append(',');
        text.Append(OfText(name)).Append(':').Append(value);
    }

    private static string JsonTextOf(RecordedMember member, object value) =>
        (string?)member.Property.GetValueConverter()?.ConvertToProvider(value)
            ?? throw new InvalidOperationException($"{member.Name} has no JSON text.");

    private static void Append(StringBuilder text, JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                text.Append('{');
                foreach (var member in element.EnumerateObject().OrderBy(m => m.Name, StringComparer.Ordinal))
                {
                    AppendMember(text, member.Name, "");
                    Append(text, member.Value);
                }

                text.Append('}');
                break;
            case JsonValueKind.Array:
                text.Append('[');
                foreach (var (index, item) in element.EnumerateArray().Index())
                {
                    if (index > 0)
                        text.Append(',');
                    Append(text, item);
                }

                text.Append(']');
                break;
            case JsonValueKind.String:
                text.Append(OfText(element.GetString() ?? ""));
                break;
            case JsonValueKind.Number when element.TryGetDecimal(out var number):
                text.Append(OfDecimal(number));
                break;
            default:
                text.Append(element.GetRawText());
                break;
        }
    }
}
