using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>One of a set of words, letter by letter.</summary>
internal sealed record WordShape(params IReadOnlyList<string> Words) : Shape
{
    /// <summary>Words that are known but not in this build, and why.</summary>
    public IReadOnlyList<string> Elsewhere { get; init; } = [];

    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (!Is(sent, JsonValueKind.String, pointer, mistakes, "a text") || Words.Contains(sent.Text))
            return;
        var known = string.Join(", ", Words);
        mistakes.Add(pointer, Elsewhere.Contains(sent.Text)
            ? $"This build does not have {sent.Text}; it has {known}."
            : $"It must be one of {known}.");
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) => new OpenApiSchema
    {
        Type = JsonSchemaType.String,
        Description = About,
        Enum = [.. Words.Select(word => (JsonNode)JsonValue.Create(word)!)],
    };
}
