using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Precision;

/// <summary>Precision statements that ship, for reading.</summary>
/// <remarks>
/// None is current: the figures of the editions in force aren't public, so the laboratory enters them from its own
/// copies. The statement of the first interlaboratory study (1991) is kept under its own editions, 91 to 01, and
/// never stands in for a later one; so is the first statement of the triple expansion, editions 03 to 07. Source: ASTM
/// D5191-91 to -01, from memory; ASTM D6378-03 to -07, published.
/// </remarks>
public static class PublishedPrecision
{
    /// <summary>All that ship.</summary>
    public static IReadOnlyList<PrecisionStatement> All { get; } =
    [
        First(PressureUnit.Kilopascal, 124m, 14m, 100m),
        First(PressureUnit.Psi, 18.0m, 2m, 15m),
        new(
            TestMethods.AstmD6378, "03-07", Correlation.VaporPressure, null, null, 7m, 150m, PressureUnit.Kilopascal,
            new LinearForm(0.50m, 0m), new LinearForm(1.63m, 0m),
            "ASTM D6378-03 to -07, first study; the psi figure printed beside R doesn't agree with it", FactStatus.Published),
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
