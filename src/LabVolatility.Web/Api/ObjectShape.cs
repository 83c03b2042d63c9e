using System.Text.Json;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>An object of known members; unknown ones and twins are mistakes.</summary>
internal sealed record ObjectShape(string Name, params IReadOnlyList<Member> Members) : Shape
{
    private const int LongestName = 80;

    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (!Is(sent, JsonValueKind.Object, pointer, mistakes, "an object"))
            return;
        foreach (var name in sent.Members.Select(m => m.Key).Where(name => Members.All(m => m.Name != name)).Distinct())
            mistakes.Add(Mistakes.Step(pointer, Cut(name)), $"There is no such member here; known are {string.Join(", ", Members.Select(m => m.Name))}.");
        foreach (var twin in sent.Members.GroupBy(m => m.Key).Where(g => g.Count() > 1))
            mistakes.Add(Mistakes.Step(pointer, Cut(twin.Key)), "It is there more than once.");
        foreach (var member in Members)
            Check(member, sent.Find(member.Name), Mistakes.Step(pointer, member.Name), mistakes);
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) => Shared(document, Name, () => new OpenApiSchema
    {
        Type = JsonSchemaType.Object,
        Description = About,
        Properties = Members.ToDictionary(m => m.Name, m => m.Required ? m.Shape.Describe(document) : Optional(m.Shape.Describe(document))),
        Required = Members.Where(m => m.Required).Select(m => m.Name).ToHashSet(),
        AdditionalPropertiesAllowed = false,
    });

    private static void Check(Member member, Sent? value, string pointer, Mistakes mistakes)
    {
        if (value is { IsNull: false })
            member.Shape.Check(value, pointer, mistakes);
        else if (member.Required)
            mistakes.Add(pointer, value is null ? "It is missing." : "It must not be null.");
    }

    private static IOpenApiSchema Optional(IOpenApiSchema schema)
    {
        if (schema is not OpenApiSchema { Type: not null, Enum: null } plain)
            return new OpenApiSchema { OneOf = [new OpenApiSchema { Type = JsonSchemaType.Null }, schema] };
        plain.Type |= JsonSchemaType.Null;
        return plain;
    }

    private static string Cut(string name) => name.Length <= LongestName ? name : name[..LongestName];
}
