using System.Text.Json;
using System.Text.Json.Nodes;
using LabVolatility.Core.Quantities;
using Microsoft.OpenApi;

namespace LabVolatility.Web.Api;

/// <summary>A physical quantity: {"value": 63.4, "unit": "kPa"}.</summary>
internal sealed record QuantityShape : Shape
{
    private const decimal SmallestDifferenceKpa = 0.000001m;

    private readonly string _name;
    private readonly IReadOnlyList<string> _units;
    private readonly string _range;
    private readonly Func<decimal, string, bool> _isPhysical;

    private QuantityShape(string name, IReadOnlyList<string> units, string range, Func<decimal, string, bool> isPhysical) =>
        (_name, _units, _range, _isPhysical) = (name, units, range, isPhysical);

    /// <summary>An absolute pressure.</summary>
    public static QuantityShape Pressure { get; } = new(
        "Pressure", [.. PressureUnits.All.Select(u => u.Symbol())], "An absolute pressure is 0 to 3500 kPa.",
        (value, unit) => PressureUnits.TryParse(unit, out var known) && AbsolutePressure.TryFrom(value, known, out _));

    public static QuantityShape GaugePressure { get; } = new(
        "GaugePressure", [.. PressureUnits.All.Select(u => u.Symbol())], "A gauge pressure is above a vacuum and at most 3500 kPa.",
        (value, unit) => PressureUnits.TryParse(unit, out var known) && Core.Quantities.GaugePressure.TryFrom(value, known, out _));

    public static QuantityShape Temperature { get; } = new(
        "Temperature", [.. TemperatureUnits.All.Select(u => u.Symbol())], "A temperature is above 0 K, up to 1000 K.",
        (value, unit) => TemperatureUnits.TryParse(unit, out var known) && Core.Quantities.Temperature.TryFrom(value, known, out _));

    public static QuantityShape Volume { get; } = new(
        "Volume", [.. VolumeUnits.All.Select(u => u.Symbol())], "A volume is more than 0, up to 1 000 000 m³.",
        (value, unit) => value > 0 && VolumeUnits.TryParse(unit, out var known) && Core.Quantities.Volume.TryFrom(value, known, out _));

    /// <summary>A precision figure: a difference of pressures, above zero.</summary>
    public static QuantityShape PressureDifference { get; } = new(
        "PressureDifference", [.. PressureUnits.All.Select(u => u.Symbol())], "r and R are above zero, at least 0.000001 kPa; leave them out where they aren't set.",
        (value, unit) => PressureUnits.TryParse(unit, out var known) && AbsolutePressure.TryFrom(value, known, out var difference)
            && difference.In(PressureUnit.Kilopascal) >= SmallestDifferenceKpa);

    public override void Check(Sent sent, string pointer, Mistakes mistakes)
    {
        if (!Is(sent, JsonValueKind.Object, pointer, mistakes, "a quantity, {\"value\": number, \"unit\": text}"))
            return;
        Members().Check(sent, pointer, mistakes);
        var (value, unit) = (sent.Find("value"), sent.Find("unit"));
        if (value?.Kind is JsonValueKind.Number && ExactNumber.TryRead(value.Text, out var number)
            && unit?.Kind is JsonValueKind.String && _units.Contains(unit.Text) && !_isPhysical(number, unit.Text))
            mistakes.Add($"{pointer}/value", _range);
    }

    public override IOpenApiSchema Describe(OpenApiDocument document) => Shared(document, _name, () => new OpenApiSchema
    {
        Type = JsonSchemaType.Object,
        Description = _range,
        Properties = new Dictionary<string, IOpenApiSchema>
        {
            ["value"] = new OpenApiSchema { Type = JsonSchemaType.Number },
            ["unit"] = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. _units.Select(u => (JsonNode)JsonValue.Create(u)!)] },
        },
        Required = new HashSet<string> { "value", "unit" },
        AdditionalPropertiesAllowed = false,
    });

    private ObjectShape Members() => new(_name, new Member("value", new NumberShape(), true), new Member("unit", new WordShape(_units), true));
}
