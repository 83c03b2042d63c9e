using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates.Documents;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>A batch as a cargo certificate can take it.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="InForce">Its decision in force; null where nobody decided.</param>
/// <param name="Line">What would stand on the paper, under the batch's own tank; null where something stands against it.</param>
/// <param name="Against">What stands against it, in words, or null.</param>
public sealed record CargoBatch(Batch Batch, DecisionInForce? InForce, CargoTankLine? Line, string? Against)
{
    /// <summary>Who measured or amended any of its results.</summary>
    internal IReadOnlySet<Guid> Hands { get; init; } = new HashSet<Guid>();
}
