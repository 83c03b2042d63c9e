using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Demo;

/// <summary>What an instrument would show for a value that the demo wants, by the method's equation turned round.</summary>
internal static class DemoReading
{
    private const int Places = 2;

    /// <summary>The total pressure as typed: "63.45 kPa" for a DVPE in kPa, "9.36 psi" for an RVP in psi.</summary>
    public static string Total(DemoProduct product, decimal wanted)
    {
        var authority = product.Grade.Tests[0].Authorities[0];
        var unit = product == DemoProduct.Blendstock ? PressureUnit.Psi : PressureUnit.Kilopascal;
        var form = Correlations.Find(product.Method, authority)!.Forms.First(f => f.Unit == unit);
        return $"{Rounding.Text((wanted + form.Subtrahend) / form.Slope, Places)} {unit.Symbol()}";
    }
}
