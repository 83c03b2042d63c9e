using System.Text.Json;

namespace LabVolatility.Web.Api;

/// <summary>A JSON value as it was sent: numbers by their digits, members in their order, twins and all.</summary>
internal sealed record Sent(JsonValueKind Kind, string Text, IReadOnlyList<KeyValuePair<string, Sent>> Members, IReadOnlyList<Sent> Items)
{
    /// <exception cref="InvalidOperationException">A text isn't Unicode: half of a surrogate pair.</exception>
    public static Sent From(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => new(JsonValueKind.Object, "", [.. element.EnumerateObject().Select(m => KeyValuePair.Create(m.Name, From(m.Value)))], []),
        JsonValueKind.Array => new(JsonValueKind.Array, "", [], [.. element.EnumerateArray().Select(From)]),
        JsonValueKind.String => new(JsonValueKind.String, element.GetString()!, [], []),
        _ => new(element.ValueKind, element.GetRawText(), [], []),
    };

    public Sent? Find(string name) => Members.FirstOrDefault(m => m.Key == name).Value;

    public bool IsNull => Kind is JsonValueKind.Null;
}
