using System.Text.Json;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>An object from names to percentages.</summary>
internal sealed record PercentagesShape : Shape
{
    private static readonly NumberShape Percent = new(Low: 0, High: 100);

    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (!Is(sent, JsonValueKind.Object, pointer, mistakes, "an object"))
            return;
        foreach (var member in sent.Members)
            Percent.Check(member.Value, Mistakes.Step(pointer, member.Key), mistakes);
        foreach (var twin in sent.Members.GroupBy(m => m.Key).Where(g => g.Count() > 1))
            mistakes.Add(Mistakes.Step(pointer, twin.Key), "It is there more than once.");
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) => new OpenApiSchema
    {
        Type = JsonSchemaType.Object,
        Description = About,
        AdditionalProperties = Percent.Describe(document),
    };
}
