using System.Text.Json;
using LabVolatility.Core.Quantities;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>A pressure, a quantity in another unit, which is only held against a limit in the same, or a bare number.</summary>
internal sealed record LimitNumberShape : Shape
{
    private const decimal Largest = 1_000_000_000m;

    private static readonly IReadOnlyList<string> OtherUnits = ["% v/v", "index", "degC", "degF", "K", "mL", "L", "m3", "bbl"];

    /// <summary>True for r and R, which are above zero.</summary>
    public bool Positive { get; init; }

    // Within these bounds no square or quotient of the arithmetic leaves what a decimal holds.
    private NumberShape Number => Positive ? new NumberShape(Low: 0.000000001m, High: Largest) : new NumberShape(Low: -Largest, High: Largest);

    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (sent.Kind is JsonValueKind.Number)
            Number.Check(sent, pointer, mistakes);
        else if (sent.Find("unit") is { Kind: JsonValueKind.String } unit && OtherUnits.Contains(unit.Text))
            Other().Check(sent, pointer, mistakes);
        else
            Pressure.Check(sent, pointer, mistakes);
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) => new OpenApiSchema
    {
        Description = About,
        OneOf = [Pressure.Describe(document), Other().Describe(document), Number.Describe(document)],
    };

    private QuantityShape Pressure => Positive ? QuantityShape.PressureDifference : QuantityShape.Pressure;

    private ObjectShape Other() => new(
        Positive ? "OtherPrecision" : "OtherQuantity", new Member("value", Number, true), new Member("unit", new WordShape(OtherUnits), true));

    /// <summary>The number in a unit, the number's own where none is asked for; null for another kind of unit.</summary>
    public static decimal? In(Given given, string unit)
    {
        if (UnitOf(given) == unit)
            return given.Number ?? given.Amount;
        return given.Pressure is { } pressure && PressureUnits.TryParse(unit, out var asked) ? pressure.In(asked) : null;
    }

    /// <summary>The unit, "" for a bare number; null where nothing is given.</summary>
    public static string? UnitOf(Given given) => given.Number is not null ? "" : given.Unit;
}
