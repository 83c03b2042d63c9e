using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What a sample has to do with hand blends.</summary>
/// <param name="Recipe">How it was made; null where it was drawn.</param>
/// <param name="MadeFromIt">Numbers of the hand blends made from it, the first made first.</param>
/// <param name="IsBlendstock">Ethanol may be blended into it: its batch's state, else its grade's, is blendstock.</param>
public sealed record HandBlendSheet(HandBlendEvidence? Recipe, IReadOnlyList<string> MadeFromIt, bool IsBlendstock);
