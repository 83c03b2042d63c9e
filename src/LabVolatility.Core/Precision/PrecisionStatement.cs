using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Precision;

/// <summary>r and R of one method, edition, quantity and container, within a range of levels.</summary>
/// <param name="Method">The method's designation.</param>
/// <param name="Edition">The edition that states it; it never fills in for another edition.</param>
/// <param name="Quantity">The quantity it speaks of: "DVPE".</param>
/// <param name="Container">The container; null: all.</param>
/// <param name="ContainerMillilitres">The container's size in mL; null: all.</param>
/// <param name="LowKpa">The lowest level in kPa, included; null: none stated.</param>
/// <param name="HighKpa">The highest level in kPa, included; null: none stated.</param>
/// <param name="Unit">The unit of both forms and of the level put in.</param>
/// <param name="Repeatability">r; null: not set.</param>
/// <param name="Reproducibility">R; null: not set.</param>
/// <param name="Source">Edition and clause.</param>
/// <param name="Status">How well it is known.</param>
public sealed record PrecisionStatement(
    string Method,
    string Edition,
    string Quantity,
    ContainerKind? Container,
    decimal? ContainerMillilitres,
    decimal? LowKpa,
    decimal? HighKpa,
    PressureUnit Unit,
    LinearForm? Repeatability,
    LinearForm? Reproducibility,
    string Source,
    FactStatus Status)
{
    /// <summary>Whether a level is within the stated range, both ends included.</summary>
    public bool Covers(AbsolutePressure level)
    {
        var kpa = level.In(PressureUnit.Kilopascal);
        return (LowKpa is null || kpa >= LowKpa) && (HighKpa is null || kpa <= HighKpa);
    }

    /// <summary>r at a level, in <paramref name="unit"/>, not rounded; null where it is not set.</summary>
    public decimal? RepeatabilityAt(AbsolutePressure level, PressureUnit unit) => At(Repeatability, level, unit);

    /// <summary>R at a level, in <paramref name="unit"/>, not rounded; null where it is not set.</summary>
    public decimal? ReproducibilityAt(AbsolutePressure level, PressureUnit unit) => At(Reproducibility, level, unit);

    private decimal? At(LinearForm? form, AbsolutePressure level, PressureUnit unit) =>
        form is null ? null : PressureUnits.Convert(form.At(level.In(Unit)), Unit, unit);
}
