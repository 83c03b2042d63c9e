using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Methods;

/// <summary>A correlation as printed for one unit: y = Slope · X + GasSlope · Pgas − Subtrahend.</summary>
/// <param name="Unit">The unit of X, Pgas and y.</param>
/// <param name="Slope">Dimensionless.</param>
/// <param name="Subtrahend">In the unit, taken off; below zero where the source adds.</param>
/// <param name="Source">Where this form is printed.</param>
/// <param name="Status">How well this form is known.</param>
public sealed record PrintedForm(
    PressureUnit Unit, decimal Slope, decimal Subtrahend, string Source, FactStatus Status)
{
    /// <summary>Dimensionless; 0 where the source doesn't take the gas part.</summary>
    public decimal GasSlope { get; init; }

    /// <summary>The size of container that the source prints it for, in mL; null: all.</summary>
    public decimal? ContainerMillilitres { get; init; }

    /// <summary>Slope · X + GasSlope · Pgas − Subtrahend, not rounded; may be negative.</summary>
    /// <param name="x">X in the form's unit.</param>
    /// <param name="gas">Pgas in the form's unit, where the form takes it.</param>
    /// <remarks>Source: <see cref="Source"/>.</remarks>
    public decimal At(decimal x, decimal gas = 0m) => (Slope * x) + (GasSlope * gas) - Subtrahend;

    /// <summary>Whether it is printed for a container; where it is for one size only, an unknown size doesn't do.</summary>
    /// <param name="container">The container's size; null: not known.</param>
    /// <remarks>Source: <see cref="Source"/>.</remarks>
    public bool Fits(Volume? container) =>
        ContainerMillilitres is null || ContainerMillilitres == container?.In(VolumeUnit.Millilitre);

    /// <summary>The right side with what is put in: "0.965 · 70.0 − 3.78".</summary>
    /// <param name="x">X as a symbol or a number.</param>
    /// <param name="gas">Pgas as a symbol or a number.</param>
    internal string Write(string x, string gas)
    {
        var text = Slope == 1m ? x : $"{Rounding.Plain(Slope)} · {x}";
        if (GasSlope != 0m)
            text += $" {Sign(GasSlope)} {(Math.Abs(GasSlope) == 1m ? gas : $"{Rounding.Plain(Math.Abs(GasSlope))} · {gas}")}";
        return Subtrahend == 0m ? text : $"{text} {Sign(-Subtrahend)} {Rounding.Plain(Math.Abs(Subtrahend))}";
    }

    private static string Sign(decimal term) => term < 0m ? "−" : "+";
}
