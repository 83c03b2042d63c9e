using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The rule "a hand blend is made from a sound blendstock sample": state, seal, what is kept.</summary>
internal static class BlendstockFit
{
    public const string Rule = "hand-blend-needs-sound-blendstock";

    /// <param name="sample">The blendstock sample with its containers and their openings.</param>
    /// <param name="state">Of its batch, else of its grade.</param>
    /// <param name="isBlend">It is a hand blend itself.</param>
    /// <param name="voided">Why it is void for a decision; null when it stands.</param>
    /// <param name="container">The number asked for.</param>
    /// <param name="wanted">Volume to be taken from it; null where it couldn't be read.</param>
    /// <param name="today">The laboratory's local day.</param>
    public static IEnumerable<Problem> Check(
        Sample sample, ProductState state, bool isBlend, string? voided, int container, Volume? wanted, DateOnly today)
    {
        if (isBlend)
            yield return new Problem("/blendstock", $"Sample {sample.Number} is a hand blend itself; ethanol is added to a blendstock.", Rule);
        else if (state != ProductState.Blendstock)
            yield return new Problem("/blendstock", $"Sample {sample.Number} is {state.Text()} product, not a blendstock for blending with ethanol.", Rule);
        if (sample.State != SampleState.Received)
            yield return new Problem("/blendstock", $"Sample {sample.Number} is {(sample.State == SampleState.Announced ? "announced, not received yet" : "refused at receipt")}.", Rule);
        if (voided is not null)
            yield return new Problem("/blendstock", $"Sample {sample.Number} is {voided}: draw a new one.", Rule);
        if (sample.Containers.FirstOrDefault(c => c.Number == container) is not { } used)
        {
            yield return new Problem("/containerNumber", $"Sample {sample.Number} has no container {container}.");
            yield break;
        }

        if (used.Leaking)
            yield return new Problem("/containerNumber", $"Container {container} leaks: it is not fit for vapour pressure.", Rule);
        if (used.DisposedAt is not null)
            yield return new Problem("/containerNumber", $"Container {container} has been disposed of.", Rule);
        if (used.Openings.Count > 0)
            yield return new Problem("/containerNumber", $"Container {container} has been opened already and has lost light ends. Use a sealed one.", Rule);
        if (RetainedPortion.Check(sample, used, today) is { } kept)
            yield return kept;
        if (wanted?.In(VolumeUnit.Millilitre) > used.VolumeMillilitres * (used.FillPercent ?? 100m) / 100m)
            yield return new Problem("/blendstockVolume", $"Container {container} holds {Rounding.Shown(used.VolumeMillilitres * (used.FillPercent ?? 100m) / 100m)} mL of blendstock; {wanted} can't come from it.", Rule);
    }
}
