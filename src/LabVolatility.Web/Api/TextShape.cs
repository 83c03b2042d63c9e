using System.Text.Json;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>A text without control characters.</summary>
internal sealed record TextShape(int Longest = 100) : Shape
{
    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (!Is(sent, JsonValueKind.String, pointer, mistakes, "a text"))
            return;
        if (sent.Text.Length > Longest)
            mistakes.Add(pointer, $"It is longer than {Longest} characters.");
        if (string.IsNullOrWhiteSpace(sent.Text))
            mistakes.Add(pointer, "It is empty.");
        if (sent.Text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t')))
            mistakes.Add(pointer, "It holds a control character.");
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) =>
        new OpenApiSchema { Type = JsonSchemaType.String, Description = About, MinLength = 1, MaxLength = Longest };
}
