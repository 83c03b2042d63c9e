using LabVolatility.Core.Blending;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A recipe as understood: what was typed, with its numbers.</summary>
/// <param name="Blendstock">Volume of blendstock.</param>
/// <param name="Ethanol">Volume of ethanol.</param>
/// <param name="Temperature">Of the blend as it was closed.</param>
public sealed record HandBlendRecipe(TypedReading? Blendstock, TypedReading? Ethanol, TypedReading? Temperature)
{
    public const string MadeCold = "hand-blend-is-made-cold";
    private const decimal WarmestCelsius = 1m;

    /// <summary>What a person acknowledges before blending: bonding and ignition.</summary>
    public static IReadOnlyList<Caution> Cautions { get; } =
    [
        .. TestMethods.All[0].Cautions.Where(c => c.Gate == CautionGate.Acknowledge),
        new("F-10", "WARNING", "Blendstock and ethanol burn, and their vapours creep. Chill both before opening; measure, pour and close in the hood.", CautionGate.Show),
    ];

    /// <summary>The nominal ethanol content with its arithmetic, % (V/V); null until both volumes are there.</summary>
    public ArithmeticStep? Nominal => Blendstock is null || Ethanol is null
        ? null
        : NominalEthanol.Of(Reading.Volume(Blendstock).Value, Reading.Volume(Ethanol).Value);

    /// <summary>Reads what was typed; every problem beside its field.</summary>
    public static HandBlendRecipe Read(HandBlendRequest request, List<Problem> problems)
    {
        var recipe = new HandBlendRecipe(
            Volume(request.BlendstockVolume, "/blendstockVolume", "How much blendstock, for example 900 mL?", problems),
            Volume(request.EthanolVolume, "/ethanolVolume", "How much ethanol, for example 100 mL?", problems),
            Cold(request.Temperature, problems));
        if (string.IsNullOrWhiteSpace(request.EthanolLot))
            problems.Add(new Problem("/ethanolLot", "Which lot of ethanol? It stands on its bottle."));
        foreach (var caution in Cautions.Where(c => c.Gate == CautionGate.Acknowledge && request.Confirmed.All(done => done.Code != c.Code)))
            problems.Add(new Problem($"/confirmed/{caution.Code}", $"Confirm: {caution.Text}", HandlingConfirmed.Rule));
        return recipe;
    }

    private static TypedReading? Volume(string? typed, string field, string missing, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
        {
            problems.Add(new Problem(field, missing));
            return null;
        }

        if (!QuantityText.TryReadVolume(typed, VolumeUnit.Millilitre, out var volume, out var problem))
            problems.Add(new Problem(field, problem!));
        else if (volume.Value == 0m)
            problems.Add(new Problem(field, "More than nothing belongs in the blend."));
        else
            return Reading.Of(typed, volume);
        return null;
    }

    // As for the saturation with air: common practice, since no source lays it down for a blend.
    private static TypedReading? Cold(string? typed, List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(typed))
        {
            problems.Add(new Problem("/temperature", "Measure the blend as it is closed, and type its temperature: 0 to 1 °C."));
            return null;
        }

        if (!QuantityText.TryReadTemperature(typed, TemperatureUnit.Celsius, out var temperature, out var problem))
        {
            problems.Add(new Problem("/temperature", problem!));
            return null;
        }

        if (temperature.In(TemperatureUnit.Celsius) is < 0m or > WarmestCelsius)
            problems.Add(new Problem("/temperature", $"The blend was at {temperature}; it is made at 0 to 1 °C, as for the saturation with air (common practice), or light ends are lost. Chill blendstock and ethanol and make another.", MadeCold));
        return Reading.Of(typed, temperature);
    }
}
