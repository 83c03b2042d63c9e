using System.Globalization;
using System.Text.Json;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>A local date: "2026-05-10".</summary>
internal sealed record DateShape : Shape
{
    private const int FirstYear = 1970;
    private const int LastYear = 2199;

    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (Is(sent, JsonValueKind.String, pointer, mistakes, "a date") && !TryRead(sent.Text, out _))
            mistakes.Add(pointer, "It must be a date that exists, as 2026-05-10, from 1970 to 2199.");
    }

    public static bool TryRead(string? text, out DateOnly date) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date)
        && date.Year is >= FirstYear and <= LastYear;

    public override IOpenApiSchema Describe(OpenApiDocument document) =>
        new OpenApiSchema { Type = JsonSchemaType.String, Format = "date", Description = About };
}
