using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Batches;

namespace LabVolatility.Laboratory.Today;

/// <summary>What a tank holds now, held against the limits of the next season.</summary>
/// <param name="Tank">Its code.</param>
/// <param name="Grade">Its batch's grade.</param>
/// <param name="Batch">The last batch in it.</param>
/// <param name="Outcome">Of that batch, as measured, on the first day of the new limits.</param>
/// <param name="Binding">The limit that binds then; null where nothing that counts was measured.</param>
public sealed record TankStanding(string Tank, string Grade, string Batch, Outcome Outcome, LimitEvidence? Binding)
{
    public bool IsFit => Outcome == Outcome.Conforms;
}
