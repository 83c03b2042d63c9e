using System.Globalization;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>Writes an address's body, scope and refusals into the document.</summary>
internal static class OperationWords
{
    private const string ProblemName = "Problem";

    public static Task Write(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancel)
    {
        var document = context.Document ?? throw new InvalidOperationException("The document isn't there yet.");
        var metadata = context.Description.ActionDescriptor.EndpointMetadata;
        operation.Responses ??= [];
        var statuses = metadata.OfType<ProblemsGiven>().SelectMany(p => p.Statuses).ToHashSet();
        if (metadata.OfType<BodyTaken>().FirstOrDefault() is { } body)
        {
            operation.RequestBody = Body(document, body);
            statuses.UnionWith([400, 413, 415]);
        }

        foreach (var asked in metadata.OfType<QueryAsked>())
        {
            (operation.Parameters ??= []).Add(new OpenApiParameter
            {
                Name = asked.Name,
                In = ParameterLocation.Query,
                Description = asked.About,
                Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = asked.Format },
            });
        }

        if (metadata.OfType<KeyScopeNeeded>().FirstOrDefault() is { } needed)
        {
            operation.Security = [InterfaceDocument.Security(document, ScopeWords.Text(needed.Scope))];
            operation.Description = $"Scope `{ScopeWords.Text(needed.Scope)}`.";
            statuses.UnionWith([401, 403]);
        }

        statuses.Add(429);
        foreach (var status in statuses.Order())
            operation.Responses[status.ToString(CultureInfo.InvariantCulture)] = Problem(document, status);
        return Task.CompletedTask;
    }

    private static OpenApiRequestBody Body(OpenApiDocument document, BodyTaken body)
    {
        var schemas = body.Shapes.Select(s => s.Describe(document)).ToList();
        return new OpenApiRequestBody
        {
            Required = true,
            Content = new Dictionary<string, OpenApiMediaType>
            {
                ["application/json"] = new() { Schema = schemas.Count == 1 ? schemas[0] : new OpenApiSchema { OneOf = schemas } },
            },
        };
    }

    private static OpenApiResponse Problem(OpenApiDocument document, int status)
    {
        var response = new OpenApiResponse
        {
            Description = ReasonPhrases.GetReasonPhrase(status),
            Content = new Dictionary<string, OpenApiMediaType> { [ProblemAnswer.ContentType] = new() { Schema = ProblemSchema(document) } },
        };
        if (status == StatusCodes.Status429TooManyRequests)
        {
            response.Headers = new Dictionary<string, IOpenApiHeader>
            {
                ["Retry-After"] = new OpenApiHeader { Description = "Seconds to wait.", Schema = new OpenApiSchema { Type = JsonSchemaType.Integer } },
            };
        }

        return response;
    }

    private static OpenApiSchemaReference ProblemSchema(OpenApiDocument document)
    {
        document.Components ??= new OpenApiComponents();
        document.Components.Schemas ??= new Dictionary<string, IOpenApiSchema>();
        if (!document.Components.Schemas.ContainsKey(ProblemName))
            document.AddComponent(ProblemName, Schema());
        return new OpenApiSchemaReference(ProblemName, document);
    }

    private static OpenApiSchema Schema() => new()
    {
        Type = JsonSchemaType.Object,
        Description = "RFC 9457. Where a request breaks rules, errors holds every message at its JSON pointer.",
        Properties = new Dictionary<string, IOpenApiSchema>
        {
            ["type"] = Text(),
            ["title"] = Text(),
            ["status"] = new OpenApiSchema { Type = JsonSchemaType.Integer },
            ["detail"] = Text(),
            ["reference"] = Text("What the administrator finds in the log."),
            ["errors"] = new OpenApiSchema
            {
                Type = JsonSchemaType.Object,
                AdditionalProperties = new OpenApiSchema { Type = JsonSchemaType.Array, Items = Text() },
            },
            ["inForce"] = new OpenApiSchema { Description = "With 409: what is in force." },
        },
        Required = new HashSet<string> { "title", "status", "detail", "reference" },
    };

    private static OpenApiSchema Text(string? about = null) => new() { Type = JsonSchemaType.String, Description = about };
}
