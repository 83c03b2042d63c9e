using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Finds the r and R that fit a determination.</summary>
internal static class PrecisionLookup
{
    public static PrecisionFit Find(
        DeterminationState state, string quantity, decimal level, PressureUnit unit, IReadOnlyList<PrecisionStatement> precision)
    {
        if (state.Hazy)
            return new PrecisionFit(null, null, "A hazy sample has no precision.");
        if (!AbsolutePressure.TryFrom(level, unit, out var pressure))
            return new PrecisionFit(null, null, "No precision at a pressure below zero.");
        var answer = PrecisionChoice.Choose(precision, new PrecisionQuestion(
            state.Method, state.Edition, quantity, state.ContainerKind,
            Volume.From(state.ContainerMillilitres, VolumeUnit.Millilitre), pressure));
        return new PrecisionFit(
            answer.Statement?.RepeatabilityAt(pressure, unit), answer.Statement?.ReproducibilityAt(pressure, unit), answer.Why);
    }
}
