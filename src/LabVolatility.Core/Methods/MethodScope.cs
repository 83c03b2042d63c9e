using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>The pressures that a method covers, both ends included.</summary>
/// <remarks>Source: the one that each scope names.</remarks>
/// <param name="Quantity">What the range speaks of: "Ptot" or "DVPE".</param>
/// <param name="LowKpa">Lower end in kPa.</param>
/// <param name="HighKpa">Upper end in kPa.</param>
/// <param name="LowPsi">Lower end as printed in psi; null where it isn't.</param>
/// <param name="HighPsi">Upper end as printed in psi; null where it isn't.</param>
/// <param name="Source">Edition and clause.</param>
/// <param name="Status">How well it is known.</param>
public sealed record MethodScope(
    string Quantity,
    decimal LowKpa,
    decimal HighKpa,
    decimal? LowPsi,
    decimal? HighPsi,
    string Source,
    FactStatus Status)
{
    /// <summary>Whether a pressure is covered; held against the range as printed in its own unit.</summary>
    public bool Covers(AbsolutePressure pressure)
    {
        var (low, high, unit) = Printed(pressure.Unit);
        return pressure.In(unit) >= low && pressure.In(unit) <= high;
    }

    /// <summary>The range in words, as printed for a unit: "7 to 130 kPa".</summary>
    public string Range(PressureUnit readingUnit)
    {
        var (low, high, unit) = Printed(readingUnit);
        return $"{Rounding.Plain(low)} to {Rounding.Plain(high)} {unit.Symbol()}";
    }

    private (decimal Low, decimal High, PressureUnit Unit) Printed(PressureUnit unit) =>
        unit == PressureUnit.Psi && LowPsi is { } low && HighPsi is { } high
            ? (low, high, unit)
            : (LowKpa, HighKpa, PressureUnit.Kilopascal);
}
