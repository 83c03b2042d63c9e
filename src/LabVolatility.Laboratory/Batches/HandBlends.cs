using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Loads the recipes of samples that were made at the bench.</summary>
internal static class HandBlends
{
    /// <summary>By sample id; a sample that was drawn isn't in it.</summary>
    public static async Task<IReadOnlyDictionary<Guid, HandBlendEvidence>> LoadAsync(
        LabContext context, IReadOnlyList<Guid> sampleIds, CancellationToken cancel)
    {
        var blends = await context.HandBlends.AsNoTracking().Where(b => sampleIds.Contains(b.SampleId))
            .Select(b => new
            {
                Blend = b,
                Blendstock = context.Samples.Where(s => s.Id == b.BlendstockId).Select(s => s.Number).First(),
                Container = context.Containers.Where(c => c.Id == b.BlendstockContainerId).Select(c => c.Number).First(),
                MadeBy = context.People.Where(p => p.Id == b.MadeBy).Select(p => p.FullName).First(),
            }).ToListAsync(cancel);
        if (blends.Count == 0)
            return new Dictionary<Guid, HandBlendEvidence>();
        var contents = await context.BlendContents.AsNoTracking().Where(c => sampleIds.Contains(c.SampleId)).ToListAsync(cancel);
        return blends.ToDictionary(b => b.Blend.SampleId, b => Of(b.Blend, b.Blendstock, b.Container, b.MadeBy, contents));
    }

    private static HandBlendEvidence Of(HandBlend blend, string blendstock, int container, string madeBy, List<BlendContent> contents)
    {
        var measured = contents.Where(c => c.SampleId == blend.SampleId).OrderBy(c => c.At).ThenBy(c => c.Id).LastOrDefault();
        var recipe = new HandBlendRecipe(blend.BlendstockVolume, blend.EthanolVolume, blend.Temperature);
        return new HandBlendEvidence(
            blendstock, container, blend.EthanolLot, AsTyped(blend.BlendstockVolume), AsTyped(blend.EthanolVolume), AsTyped(blend.Temperature),
            recipe.Nominal!, blend.MadeAt, madeBy, measured?.EthanolPercent, measured?.Method);
    }

    // The digits as typed: a unit is put behind only where none was.
    private static string AsTyped(TypedReading reading) => reading.Typed.Any(char.IsLetter)
        ? reading.Typed.Trim()
        : $"{reading.Typed.Trim()} {reading.Unit.Replace("deg", "°", StringComparison.Ordinal)}";
}
