using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Precision;

/// <summary>Precision statements that ship, for reading.</summary>
/// <remarks>
/// None is current: the figures of the editions in force aren't public, so the laboratory enters them from its own
/// copies. The statement of the first interlaboratory study (1991) is kept under its own editions, 91 to 01, and
/// never stands in for a later one. Source: ASTM D5191-91 to -01, from memory.
/// </remarks>
public static class PublishedPrecision
{
    /// <summary>All that ship.</summary>
    public static IReadOnlyList<PrecisionStatement> All { get; } =
    [
        First(PressureUnit.Kilopascal, 124m, 14m, 100m),
        First(PressureUnit.Psi, 18.0m, 2m, 15m),
    ];

    private static PrecisionStatement First(PressureUnit unit, decimal offset, decimal low, decimal high) => new(
        TestMethods.AstmD5191, "91-01", "DVPE", null, null,
        AbsolutePressure.From(low, unit).In(PressureUnit.Kilopascal),
        AbsolutePressure.From(high, unit).In(PressureUnit.Kilopascal), unit,
        new LinearForm(0.00807m * offset, 0.00807m),
        new LinearForm(0.0161m * offset, 0.0161m),
        "ASTM D5191-91 to -01, study of 1991, 0 to 15 % oxygenates",
        FactStatus.FromMemory);
}
