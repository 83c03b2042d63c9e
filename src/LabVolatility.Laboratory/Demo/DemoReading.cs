using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Laboratory.Demo;

/// <summary>What an instrument would show for a value that the demo wants, by the method's equation turned round.</summary>
internal static class DemoReading
{
    /// <summary>What the demo's own correlation takes off the pressure free of gas, in kPa.</summary>
    public const decimal FreeOfAirLess = 1.0m;

    private const int Places = 2;

    /// <summary>The pressure of the gas as three expansions show it, in kPa; null where one expansion doesn't tell.</summary>
    public static decimal? Gas(DemoSample sample, int container) => sample.Product.Method != TestMethods.En13016Part3 ? null
        : Rounding.ToPlaces(3.2m + (0.3m * DemoName.Scatter($"gas {sample.Name} {container}")), Places);

    /// <summary>The total pressure as typed: "63.45 kPa" for a DVPE in kPa, "9.36 psi" for an RVP in psi.</summary>
    public static string Total(DemoProduct product, decimal wanted, decimal? gas)
    {
        if (gas is not null)
            return Kpa(wanted + FreeOfAirLess + gas.Value);
        var authority = product.Grade.Tests[0].Authorities[0];
        var unit = product == DemoProduct.Blendstock ? PressureUnit.Psi : PressureUnit.Kilopascal;
        var form = Correlations.Find(product.Method, authority)!.Forms.First(f => f.Unit == unit);
        return $"{Rounding.Text((wanted + form.Subtrahend) / form.Slope, Places)} {unit.Symbol()}";
    }

    public static string Kpa(decimal value) => $"{Rounding.Text(value, Places)} {PressureUnit.Kilopascal.Symbol()}";
}
