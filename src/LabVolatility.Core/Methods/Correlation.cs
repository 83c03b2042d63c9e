using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>An equation from a measured pressure to the pressure that a specification speaks of.</summary>
/// <remarks>Source: the one that each printed form names.</remarks>
/// <param name="Name">"ASTM D5191", "EN 13016-1", "EPA" or "CARB", or the laboratory's own name.</param>
/// <param name="Authority">Whose it is.</param>
/// <param name="Method">The designation of the method whose pressure it takes.</param>
/// <param name="Quantity">What it gives: "DVPE" or "RVP".</param>
/// <param name="Version">What to cite: "ASTM D5191-22", "40 CFR 1090.1355(a)".</param>
/// <param name="Reading">The symbol of X in the source: "Ptot" or "ASVP", the total pressure; "VP4", the total less the gas part.</param>
/// <param name="Forms">The printed forms, the one in kPa first.</param>
public sealed record Correlation(
    string Name,
    Authority Authority,
    string Method,
    string Quantity,
    string Version,
    string Reading,
    IReadOnlyList<PrintedForm> Forms)
{
    /// <summary>The symbol of the vapour pressure free of gas at a ratio of 4.</summary>
    public const string VaporPressure = "VP4";

    /// <summary>Whether X is the vapour pressure free of gas, not the total pressure.</summary>
    public bool TakesVaporPressure => Reading == VaporPressure;

    /// <summary>The source of the form in kPa.</summary>
    public string Source => Forms[0].Source;

    /// <summary>How well the form in kPa is known.</summary>
    public FactStatus Status => Forms[0].Status;

    /// <summary>The unit in which a reading is put in: its own where a form is printed for it, else kPa.</summary>
    public PressureUnit PrintedUnitFor(PressureUnit readingUnit) => FormFor(readingUnit).Unit;

    /// <summary>The form for a reading in a unit: the one printed for it, else the one in kPa.</summary>
    public PrintedForm FormFor(PressureUnit readingUnit) =>
        Forms.FirstOrDefault(form => form.Unit == readingUnit) ?? Forms[0];

    /// <summary>The form for a reading in a unit from a container; null where none is printed for such a container.</summary>
    /// <param name="readingUnit">The reading's unit; kPa stands in where the equation isn't printed in it.</param>
    /// <param name="container">The container's size; null: not known.</param>
    public PrintedForm? FormFor(PressureUnit readingUnit, Volume? container) =>
        Forms.FirstOrDefault(form => form.Unit == PrintedUnitFor(readingUnit) && form.Fits(container));

    /// <summary>The equation as printed: "DVPE = 0.965 · Ptot − 3.78 kPa".</summary>
    /// <param name="printedUnit">The unit; kPa stands in where the equation isn't printed in it.</param>
    public string Equation(PressureUnit printedUnit) => Equation(FormFor(printedUnit));

    /// <summary>The equation in one of its printed forms.</summary>
    public string Equation(PrintedForm form) => $"{Quantity} = {form.Write(Reading, GasPart.Symbol)} {form.Unit.Symbol()}";
}
