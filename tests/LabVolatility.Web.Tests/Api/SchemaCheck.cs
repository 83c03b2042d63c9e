using System.Globalization;
using System.Text.Json;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

/// <summary>Holds JSON against the document's schemas, as far as the document uses them.</summary>
internal static class SchemaCheck
{
    public static void Answer(JsonElement document, string path, string method, Answered answer)
    {
        var responses = document.GetProperty("paths").GetProperty(path).GetProperty(method).GetProperty("responses");
        Assert.True(responses.TryGetProperty(answer.Status.ToString(CultureInfo.InvariantCulture), out var response), $"{method} {path}: {answer.Status} isn't described. {answer.Text}");
        Assert.True(response.GetProperty("content").TryGetProperty(answer.Type!, out var content), $"{method} {path}: {answer.Type} isn't described.");
        if (answer.Type!.EndsWith("json", StringComparison.Ordinal))
            Assert.Null(Mistake(document, content.GetProperty("schema"), answer.Json, $"{method} {path} {answer.Status}"));
    }

    public static void Request(JsonElement document, string path, JsonElement body)
    {
        var schema = document.GetProperty("paths").GetProperty(path).GetProperty("post").GetProperty("requestBody").GetProperty("content").GetProperty("application/json").GetProperty("schema");
        Assert.Null(Mistake(document, schema, body, path));
    }

    private static string? Mistake(JsonElement document, JsonElement schema, JsonElement value, string at)
    {
        if (schema.TryGetProperty("$ref", out var reference))
            return Mistake(document, Resolve(document, reference.GetString()!), value, at);
        if (schema.TryGetProperty("oneOf", out var forms))
        {
            var mistakes = forms.EnumerateArray().Select(form => Mistake(document, form, value, at)).ToList();
            return mistakes.Count(m => m is null) == 1 ? null : $"{at}: {mistakes.Count(m => m is null)} forms fit. {string.Join(" ", mistakes)}";
        }

        if (schema.TryGetProperty("type", out var type) && !Types(type).Any(t => IsOf(t, value)))
            return $"{at}: {value.ValueKind} is no {type}.";
        if (schema.TryGetProperty("enum", out var words) && words.EnumerateArray().All(w => w.GetString() != (value.ValueKind is JsonValueKind.String ? value.GetString() : null)))
            return $"{at}: {value} is none of the words.";
        return value.ValueKind switch
        {
            JsonValueKind.Object => OfObject(document, schema, value, at),
            JsonValueKind.Array => schema.TryGetProperty("items", out var item)
                ? value.EnumerateArray().Select((v, i) => Mistake(document, item, v, $"{at}/{i}")).FirstOrDefault(m => m is not null)
                : null,
            _ => null,
        };
    }

    private static string? OfObject(JsonElement document, JsonElement schema, JsonElement value, string at)
    {
        if (schema.TryGetProperty("required", out var required))
        {
            foreach (var name in required.EnumerateArray())
            {
                if (!value.TryGetProperty(name.GetString()!, out _))
                    return $"{at}: {name} is missing.";
            }
        }

        var known = schema.TryGetProperty("properties", out var properties);
        foreach (var member in value.EnumerateObject())
        {
            if (known && properties.TryGetProperty(member.Name, out var described))
            {
                if (Mistake(document, described, member.Value, $"{at}/{member.Name}") is { } mistake)
                    return mistake;
            }
            else if (known && !schema.TryGetProperty("additionalProperties", out _))
            {
                return $"{at}: {member.Name} isn't described.";
            }
            else if (schema.TryGetProperty("additionalProperties", out var more) && more.ValueKind is JsonValueKind.False)
            {
                return $"{at}: {member.Name} isn't allowed.";
            }
        }

        return null;
    }

    private static IEnumerable<string> Types(JsonElement type) =>
        type.ValueKind is JsonValueKind.Array ? type.EnumerateArray().Select(t => t.GetString()!) : [type.GetString()!];

    private static bool IsOf(string type, JsonElement value) => type switch
    {
        "null" => value.ValueKind is JsonValueKind.Null,
        "string" => value.ValueKind is JsonValueKind.String,
        "boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
        "number" => value.ValueKind is JsonValueKind.Number,
        "integer" => value.ValueKind is JsonValueKind.Number && value.TryGetInt64(out _),
        "array" => value.ValueKind is JsonValueKind.Array,
        _ => value.ValueKind is JsonValueKind.Object,
    };

    private static JsonElement Resolve(JsonElement document, string reference) =>
        reference.TrimStart('#', '/').Split('/').Aggregate(document, (at, name) => at.GetProperty(name));
}
