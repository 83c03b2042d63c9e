using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Methods;

/// <summary>What a finding is about, and what it does to a result.</summary>
/// <param name="Code">A word of the finding codes.</param>
/// <param name="Blocks">When it forbids reporting; empty: never.</param>
/// <param name="Warns">When it only remarks; empty: never.</param>
public sealed record FindingMeaning(string Code, string Blocks, string Warns)
{
    /// <summary>What a method may find.</summary>
    public static IReadOnlyList<FindingMeaning> Of(TestMethod method) => method.Expansion is { } settings
        ? [.. Common(method), .. OfExpansion(method, settings)]
        : [.. Common(method), .. OfAirSaturated];

    private static IReadOnlyList<FindingMeaning> OfAirSaturated { get; } =
    [
        new(FindingCodes.NotChilled, "the sample was opened above 1 °C", "the sample was opened below 0 °C"),
        new(FindingCodes.NotAirSaturated, "the sample was not air-saturated", "nobody stated that it was"),
    ];

    private static IEnumerable<FindingMeaning> Common(TestMethod method)
    {
        var seen = method.TakesGasOff ? "sample left over" : "chilled sample";
        yield return new(FindingCodes.ReadingMissing, method.TakesGasOff ? "the total pressure or its gas part was not entered" : "the total pressure was not entered", "");
        yield return new(FindingCodes.OutsideScope, "the correlation falls below zero", $"{method.Scope.Quantity} is outside the scope: no precision there");
        yield return new(FindingCodes.TemperatureOff, $"the chamber was not at {MethodWords.Temperature(method)}", "");
        yield return new(FindingCodes.RatioOff, $"the vapour-liquid ratio was not {MethodWords.Ratio(method)}", "");
        yield return new(FindingCodes.NotAtEquilibrium, "the pressure had not come to rest", "");
        yield return new(FindingCodes.FirstTest, "another test had opened the container", "");
        yield return new(FindingCodes.Container, $"kind of sample, container, or a size under {method.MinimumContainerVolume} that the method doesn't take", method.PrecisionContainerVolumes.Count == 0 ? "a plastic bottle" : "a plastic bottle, or a size that the precision isn't stated for");
        yield return new(FindingCodes.FillLevel, "under 70 % full", "over 80 % full: pour off while cold");
        yield return new(FindingCodes.TwoPhases, $"the {seen} parted into two liquids", "");
        yield return new(FindingCodes.Hazy, "", $"the {seen} was hazy: suffix H, and no precision");
    }

    private static IEnumerable<FindingMeaning> OfExpansion(TestMethod method, ExpansionSettings settings)
    {
        yield return new(FindingCodes.GasPressureImplausible, "three expansions that no gas behaves like, or a gas part above the total pressure", "a gas solubility outside 0.05 to 0.6, or more gas than air can be");
        yield return new(FindingCodes.SettingsOff, $"the specimen was not taken in at {settings.LowestIntroduction} to {settings.HighestIntroduction}", $"fewer than {settings.RinseCycles} rinses, or more than one run on the container");
        yield return new(FindingCodes.NoCorrelation, "", Correlations.AreOwn(method)
            ? "the laboratory has not entered its correlation: VP4 is reported, no DVPE"
            : "no predicted DVPE: another fluid than gasoline, or a container that it isn't printed for");
    }
}
