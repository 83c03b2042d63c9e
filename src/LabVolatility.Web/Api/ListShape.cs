using System.Text.Json;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>A list with at least <paramref name="Fewest"/> items.</summary>
internal sealed record ListShape(Shape Item, int Fewest = 1, int Most = 1000) : Shape
{
    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (!Is(sent, JsonValueKind.Array, pointer, mistakes, "a list"))
            return;
        if (sent.Items.Count < Fewest)
            mistakes.Add(pointer, Fewest == 1 ? "The list is empty." : $"At least {Fewest} are needed.");
        if (sent.Items.Count > Most)
            mistakes.Add(pointer, $"At most {Most} at once.");
        for (var i = 0; i < sent.Items.Count && i < Most; i++)
        {
            if (sent.Items[i].IsNull)
                mistakes.Add($"{pointer}/{i}", "It must not be null.");
            else
                Item.Check(sent.Items[i], $"{pointer}/{i}", mistakes);
        }
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) => new OpenApiSchema
    {
        Type = JsonSchemaType.Array,
        Description = About,
        Items = Item.Describe(document),
        MinItems = Fewest,
        MaxItems = Most,
    };
}
