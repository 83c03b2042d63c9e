using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>A moment by ISO 8601 with its offset: "2026-05-10T14:05:00+02:00".</summary>
internal sealed partial record InstantShape : Shape
{
    private const int FirstYear = 1970;
    private const int LastYear = 2199;

    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (Is(sent, JsonValueKind.String, pointer, mistakes, "a time") && !TryRead(sent.Text, out _))
            mistakes.Add(pointer, "It must be a time that exists, with its offset, as 2026-05-10T14:05:00+02:00, from 1970 to 2199.");
    }

    public static bool TryRead(string? text, out DateTimeOffset instant)
    {
        instant = default;
        return text is not null && Form().IsMatch(text)
            && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out instant)
            && instant.UtcDateTime.Year is >= FirstYear and <= LastYear;
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) =>
        new OpenApiSchema { Type = JsonSchemaType.String, Format = "date-time", Description = About };

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}(:[0-9]{2}(\.[0-9]{1,7})?)?(Z|[+-][0-9]{2}:[0-9]{2})\z")]
    private static partial Regex Form();
}
