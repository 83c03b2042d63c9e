using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>An authority's equation from a total pressure to the pressure that a specification speaks of.</summary>
/// <remarks>Source: the one that each printed form names.</remarks>
/// <param name="Name">"ASTM D5191", "EN 13016-1", "EPA" or "CARB", or the laboratory's own name.</param>
/// <param name="Authority">Whose it is.</param>
/// <param name="Method">The designation of the method whose total pressure it takes.</param>
/// <param name="Quantity">What it gives: "DVPE" or "RVP".</param>
/// <param name="Version">What to cite: "ASTM D5191-22", "40 CFR 1090.1355(a)".</param>
/// <param name="Reading">The symbol of the total pressure in the source: "Ptot" or "ASVP".</param>
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
    /// <summary>The source of the form in kPa.</summary>
    public string Source => Forms[0].Source;

    /// <summary>How well the form in kPa is known.</summary>
    public FactStatus Status => Forms[0].Status;

    /// <summary>The unit in which a reading is put in: its own where a form is printed for it, else kPa.</summary>
    public PressureUnit PrintedUnitFor(PressureUnit readingUnit) => FormFor(readingUnit).Unit;

    /// <summary>The form for a reading in a unit: the one printed for it, else the one in kPa.</summary>
    public PrintedForm FormFor(PressureUnit readingUnit) =>
        Forms.FirstOrDefault(form => form.Unit == readingUnit) ?? Forms[0];

    /// <summary>The correlated pressure in <paramref name="printedUnit"/>, not rounded; may be negative.</summary>
    /// <param name="total">The total pressure as measured, with no correction of the apparatus's own.</param>
    /// <param name="printedUnit">A unit that the equation is printed in.</param>
    /// <exception cref="ArgumentOutOfRangeException">The equation is not printed in that unit.</exception>
    /// <remarks>Source: that of the printed form, see <see cref="PrintedForm.Source"/>.</remarks>
    public decimal Apply(AbsolutePressure total, PressureUnit printedUnit)
    {
        var form = FormFor(printedUnit);
        return form.Unit == printedUnit
            ? form.At(total.In(printedUnit))
            : throw new ArgumentOutOfRangeException(
                nameof(printedUnit), printedUnit, $"{Name} isn't printed in {printedUnit.Symbol()}.");
    }

    /// <summary>The equation as printed: "DVPE = 0.965 · Ptot − 3.78 kPa".</summary>
    /// <param name="printedUnit">The unit; kPa stands in where the equation isn't printed in it.</param>
    public string Equation(PressureUnit printedUnit)
    {
        var form = FormFor(printedUnit);
        return $"{Quantity} = {Rounding.Plain(form.Slope)} · {Reading} − {Rounding.Plain(form.Subtrahend)} {form.Unit.Symbol()}";
    }
}
