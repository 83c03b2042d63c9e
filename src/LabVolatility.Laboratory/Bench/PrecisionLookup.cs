using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Bench;

/// <summary>Finds the r and R that fit a determination.</summary>
internal static class PrecisionLookup
{
    /// <summary>For several results together: the largest R and the smallest r; none where one of them has none.</summary>
    public static PrecisionFit FindCautious(
        IEnumerable<DeterminationState> states, string quantity, decimal level, PressureUnit unit, IReadOnlyList<PrecisionStatement> precision)
    {
        var fits = states.Select(s => Find(s, quantity, level, unit, precision)).Distinct().ToList();
        return new PrecisionFit(
            fits.Exists(f => f.Repeatability is null) ? null : fits.Min(f => f.Repeatability),
            fits.Exists(f => f.Reproducibility is null) ? null : fits.Max(f => f.Reproducibility),
            (fits.Find(f => f.Repeatability is null || f.Reproducibility is null) ?? fits[0]).Why);
    }

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
