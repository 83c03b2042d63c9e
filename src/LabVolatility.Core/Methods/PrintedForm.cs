using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>A correlation as printed for one unit: y = Slope · X − Subtrahend.</summary>
/// <param name="Unit">The unit of X and y.</param>
/// <param name="Slope">Dimensionless.</param>
/// <param name="Subtrahend">In the unit, taken off.</param>
/// <param name="Source">Where this form is printed.</param>
/// <param name="Status">How well this form is known.</param>
public sealed record PrintedForm(
    PressureUnit Unit, decimal Slope, decimal Subtrahend, string Source, FactStatus Status)
{
    /// <summary>Slope · X − Subtrahend, not rounded; may be negative.</summary>
    /// <param name="total">X in the form's unit.</param>
    /// <remarks>Source: <see cref="Source"/>.</remarks>
    public decimal At(decimal total) => (Slope * total) - Subtrahend;
}
