using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Methods;

/// <summary>What a finding is about, and what it does to a result.</summary>
/// <param name="Code">A word of the finding codes.</param>
/// <param name="Blocks">When it forbids reporting; empty: never.</param>
/// <param name="Warns">When it only remarks; empty: never.</param>
public sealed record FindingMeaning(string Code, string Blocks, string Warns)
{
    /// <summary>What a method on air-saturated bottle samples may find.</summary>
    public static IReadOnlyList<FindingMeaning> Of(TestMethod method) =>
    [
        new(FindingCodes.ReadingMissing, "the total pressure was not entered", ""),
        new(FindingCodes.OutsideScope, "the correlation falls below zero", $"{method.Scope.Quantity} is outside the scope: no precision there"),
        new(FindingCodes.TemperatureOff, $"the chamber was not at {MethodWords.Temperature(method)}", ""),
        new(FindingCodes.RatioOff, $"the vapour-liquid ratio was not {MethodWords.Ratio(method)}", ""),
        new(FindingCodes.NotChilled, "the sample was opened above 1 °C", "the sample was opened below 0 °C"),
        new(FindingCodes.NotAtEquilibrium, "the pressure had not come to rest", ""),
        new(FindingCodes.FirstTest, "another test had opened the container", ""),
        new(FindingCodes.Container, $"kind of sample, container, or a size under {method.MinimumContainerVolume} that the method doesn't take", "a plastic bottle, or a size that the precision isn't stated for"),
        new(FindingCodes.FillLevel, "under 70 % full", "over 80 % full: pour off while cold"),
        new(FindingCodes.TwoPhases, "the chilled sample parted into two liquids", ""),
        new(FindingCodes.Hazy, "", "the chilled sample was hazy: suffix H, and no precision"),
        new(FindingCodes.NotAirSaturated, "the sample was not air-saturated", "nobody stated that it was"),
    ];
}
