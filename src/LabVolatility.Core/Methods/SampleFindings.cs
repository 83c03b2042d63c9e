using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>What a method remarks or rejects about the sample and its container.</summary>
internal static class SampleFindings
{
    public static IReadOnlyList<Finding> All(TestMethod method, SampleCondition sample) =>
        [.. Container(method, sample), .. Fill(method, sample), .. Look(method, sample), .. Air(method, sample)];

    private static IEnumerable<Finding> Container(TestMethod method, SampleCondition sample)
    {
        if (!method.Kinds.Contains(sample.Kind))
            yield return Block(FindingCodes.OutsideScope, $"{method.Designation} takes bottle samples that boil above 0 °C; {sample.Kind.Text()} isn't one. Choose the method made for it.");
        if (!method.Containers.Contains(sample.Container))
            yield return Block(FindingCodes.Container, $"{method.Designation} takes bottles and cans, which stand open at the air; a {sample.Container.Text()} isn't one. Sample into a bottle, or choose a method for closed cylinders.");
        else if (sample.Container == ContainerKind.PlasticBottle)
            yield return Warn(FindingCodes.Container, "Only fluorinated plastic bottles are taken (ASTM D5842); others let light ends through. Check the bottle.");
        if (sample.ContainerVolume is not { } volume)
            yield break;
        var millilitres = volume.In(VolumeUnit.Millilitre);
        if (millilitres < method.MinimumContainerVolume.In(VolumeUnit.Millilitre))
            yield return Block(FindingCodes.Container, $"A container of {volume} is too small; {method.Designation} takes {method.MinimumContainerVolume} and more. Sample into a larger one.");
        else if (method.PrecisionContainerVolumes.Count > 0 && method.PrecisionContainerVolumes.All(v => v.In(VolumeUnit.Millilitre) != millilitres))
            yield return Warn(FindingCodes.Container, $"The precision of {method.Designation} is stated for {string.Join(" and ", method.PrecisionContainerVolumes)} containers, not for {volume}. Take one of those where the result has to be defended.");
    }

    private static IEnumerable<Finding> Fill(TestMethod method, SampleCondition sample)
    {
        if (sample.FillPercent is not { } fill)
            yield break;
        if (fill < BottleMethod.LowestFillPercent)
            yield return Block(FindingCodes.FillLevel, $"The container is {Rounding.Plain(fill)} % full; under 70 % too much light ends are in the space above. Reject it and take a new sample.");
        else if (fill > BottleMethod.HighestFillPercent)
            yield return Warn(FindingCodes.FillLevel, $"The container is {Rounding.Plain(fill)} % full; over 80 % it {(method.TakesGasOff ? "has no room to grow as it warms" : "can't take up enough air")}. Pour off to 70 to 80 % while cold, and put nothing back.");
    }

    private static IEnumerable<Finding> Look(TestMethod method, SampleCondition sample)
    {
        if (sample.Phases > 1)
            yield return Block(FindingCodes.TwoPhases, $"The {Seen(method)} has parted into two liquids, so no specimen stands for the whole. Discard it and take a new sample.");
        if (sample.Hazy)
            yield return Warn(FindingCodes.Hazy, $"The {Seen(method)} was hazy: the result carries the suffix H, and the method states no precision for it. Report it with its H.");
    }

    private static string Seen(TestMethod method) => method.TakesGasOff ? "sample left over" : "chilled sample";

    private static IEnumerable<Finding> Air(TestMethod method, SampleCondition sample)
    {
        if (method.TakesGasOff)
            yield break;
        if (sample.AirSaturated == false)
            yield return Block(FindingCodes.NotAirSaturated, "The sample was not air-saturated, and the correlation counts on that air. Saturate a new container with air, three times.");
        else if (sample.AirSaturated is null)
            yield return Warn(FindingCodes.NotAirSaturated, "Nobody stated that the sample was air-saturated. Confirm it before reporting.");
    }

    private static Finding Block(string code, string message) => new(code, FindingSeverity.Blocking, message);

    private static Finding Warn(string code, string message) => new(code, FindingSeverity.Warning, message);
}
