using System.Text.Json;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

internal sealed record FlagShape : Shape
{
    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (sent.Kind is not (JsonValueKind.True or JsonValueKind.False))
            mistakes.Add(pointer, "It must be true or false.");
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) =>
        new OpenApiSchema { Type = JsonSchemaType.Boolean, Description = About };
}
