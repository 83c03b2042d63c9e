using LabVolatility.Web.Records;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>The OpenAPI document: written from what is mapped, so that it can't say something else.</summary>
internal static class InterfaceDocument
{
    public const string Name = "v1";
    private const string SecurityName = "key";

    public static void Configure(OpenApiOptions options)
    {
        options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
        options.ShouldInclude = described => described.RelativePath?.StartsWith(Interface.BasePath.TrimStart('/'), StringComparison.Ordinal) == true;
        options.AddDocumentTransformer((document, _, _) => Finish(document));
        options.AddOperationTransformer(OperationWords.Write);
        options.AddSchemaTransformer((schema, context, _) => Plain(schema, context.JsonTypeInfo.Type));
    }

    public static void Map(IEndpointRouteBuilder app, bool open)
    {
        var document = app.MapOpenApi("/openapi/{documentName}.json");
        if (open)
        {
            document.AllowAnonymous();
            return;
        }

        document.RequireAuthorization(policy => policy.AddAuthenticationSchemes(KeyAuthentication.SchemeName).RequireClaim(KeyAuthentication.ScopeClaim));
    }

    private static Task Finish(OpenApiDocument document)
    {
        document.Info = new OpenApiInfo
        {
            Title = "LabVolatility, machine interface",
            Version = "1",
            Description = "Vapour pressure of fuels: from readings to results, results against limits, samples, batches and certificates. "
                + "Values are exact decimals as JSON numbers; `reported` is text with its zeros. Unknown members are errors.",
        };
        document.Servers = [];
        document.Components ??= new OpenApiComponents();
        document.Components.SecuritySchemes = new Dictionary<string, IOpenApiSecurityScheme>
        {
            [SecurityName] = new OpenApiSecurityScheme { Type = SecuritySchemeType.Http, Scheme = "bearer", Description = "A key that an administrator made; its scopes decide what it opens." },
        };
        return Task.CompletedTask;
    }

    public static OpenApiSecurityRequirement Security(OpenApiDocument document, string scope) =>
        new() { [new OpenApiSecuritySchemeReference(SecurityName, document)] = [scope] };

    // A decimal goes out digit by digit; the format "double" would say otherwise.
    private static Task Plain(OpenApiSchema schema, Type type)
    {
        if (type == typeof(decimal) || type == typeof(decimal?))
            (schema.Format, schema.Pattern) = (null, null);
        return Task.CompletedTask;
    }
}
