using System.Text.Json;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>What a part of a request must look like: checked on every request, and written into the OpenAPI document.</summary>
internal abstract record Shape
{
    /// <summary>What it means, for the document.</summary>
    public string? About { get; init; }

    /// <summary>Adds all that is wrong with a value that is there and isn't null.</summary>
    public abstract void Check(Sent sent, string pointer, Mistakes mistakes);

    public abstract IOpenApiSchema Describe(OpenApiDocument document);

    protected static bool Is(Sent sent, JsonValueKind kind, string pointer, Mistakes mistakes, string what)
    {
        if (sent.Kind == kind)
            return true;
        mistakes.Add(pointer, $"It must be {what}.");
        return false;
    }

    /// <summary>Puts a schema among the document's components once, and points at it.</summary>
    protected static OpenApiSchemaReference Shared(OpenApiDocument document, string name, Func<IOpenApiSchema> make)
    {
        document.Components ??= new OpenApiComponents();
        document.Components.Schemas ??= new Dictionary<string, IOpenApiSchema>();
        if (!document.Components.Schemas.ContainsKey(name))
            document.AddComponent(name, make());
        return new OpenApiSchemaReference(name, document);
    }
}
