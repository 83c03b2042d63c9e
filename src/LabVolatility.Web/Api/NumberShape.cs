using System.Globalization;
using System.Text.Json;
using LabVolatility.Core.Quantities;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>A number within a range, ends included unless <paramref name="Above"/> or <paramref name="Below"/> say otherwise.</summary>
internal sealed record NumberShape(decimal? Low = null, decimal? High = null, decimal? Above = null, decimal? Below = null, bool Whole = false) : Shape
{
    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (!Is(sent, JsonValueKind.Number, pointer, mistakes, Whole ? "a whole number" : "a number"))
            return;
        if (!ExactNumber.TryRead(sent.Text, out var number))
            mistakes.Add(pointer, ExactNumber.Problem);
        else if (number < Low || number > High || number <= Above || number >= Below)
            mistakes.Add(pointer, $"It must be {Range()}.");
        else if (Whole && number != decimal.Truncate(number))
            mistakes.Add(pointer, "It must be a whole number.");
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) => new OpenApiSchema
    {
        Type = Whole ? JsonSchemaType.Integer : JsonSchemaType.Number,
        Description = About,
        Minimum = Text(Low),
        Maximum = Text(High),
        ExclusiveMinimum = Text(Above),
        ExclusiveMaximum = Text(Below),
    };

    private string Range() => string.Join(" and ", new[]
    {
        Low is { } low ? $"at least {Rounding.Plain(low)}" : null,
        Above is { } above ? $"above {Rounding.Plain(above)}" : null,
        High is { } high ? $"at most {Rounding.Plain(high)}" : null,
        Below is { } below ? $"below {Rounding.Plain(below)}" : null,
    }.OfType<string>());

    private static string? Text(decimal? number) => number?.ToString(CultureInfo.InvariantCulture);
}
