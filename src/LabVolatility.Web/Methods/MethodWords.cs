using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Methods;

namespace LabVolatility.Web.Methods;

/// <summary>A method's figures as people say them.</summary>
public static class MethodWords
{
    /// <summary>"Ptot 7 to 130 kPa, 1 to 18.6 psi".</summary>
    public static string Scope(MethodScope scope) => scope.LowPsi is null
        ? $"{scope.Quantity} {scope.Range(PressureUnit.Kilopascal)}"
        : $"{scope.Quantity} {scope.Range(PressureUnit.Kilopascal)}, {scope.Range(PressureUnit.Psi)}";

    /// <summary>"37.8 ± 0.1 °C".</summary>
    public static string Temperature(TestMethod method) =>
        $"{Rounding.Plain(method.NominalTemperature.In(TemperatureUnit.Celsius))} ± {Rounding.Plain(method.TemperatureTolerance)} °C";

    /// <summary>"4 ± 0.05".</summary>
    public static string Ratio(TestMethod method) => $"{Rounding.Plain(method.NominalRatio)} ± {Rounding.Plain(method.RatioTolerance)}";

    /// <summary>"0.1 kPa, 0.01 psi".</summary>
    public static string Resolution { get; } = string.Join(", ", new[] { PressureUnit.Kilopascal, PressureUnit.Psi }.Select(Step));

    /// <summary>"1.00068 + 0.00807 · X", or "not set".</summary>
    public static string Form(LinearForm? form) => form switch
    {
        null => "not set",
        { Slope: 0m } => Rounding.Plain(form.Constant),
        { Constant: 0m } => $"{Rounding.Plain(form.Slope)} · X",
        _ => $"{Rounding.Plain(form.Constant)} {(form.Slope < 0 ? "−" : "+")} {Rounding.Plain(Math.Abs(form.Slope))} · X",
    };

    /// <summary>"all containers", "glass bottle, 1000 mL".</summary>
    public static string Container(ContainerKind? kind, decimal? millilitres) => (kind, millilitres) switch
    {
        (null, null) => "all containers",
        ({ } what, null) => what.Text().Replace('-', ' '),
        (null, { } size) => $"all of {Rounding.Plain(size)} mL",
        ({ } what, { } size) => $"{what.Text().Replace('-', ' ')}, {Rounding.Plain(size)} mL",
    };

    /// <summary>"14 to 100 kPa", "all levels".</summary>
    public static string Range(decimal? low, decimal? high) => (low, high) switch
    {
        (null, null) => "all levels",
        ({ } from, null) => $"from {Rounding.Shown(from)} kPa",
        (null, { } to) => $"up to {Rounding.Shown(to)} kPa",
        ({ } from, { } to) => $"{Rounding.Shown(from)} to {Rounding.Shown(to)} kPa",
    };

    public static string Gate(CautionGate gate) => gate switch
    {
        CautionGate.Hard => "a value is typed and must fit",
        CautionGate.Acknowledge => "confirmed, with name and time",
        _ => "to be read",
    };

    /// <summary>Quantities for which nothing is in force under the method's own edition.</summary>
    public static IReadOnlyList<string> NotSet(TestMethod method, IEnumerable<PrecisionStatement> inForce) =>
        [.. method.PrecisionQuantities.Where(q => inForce.All(s => s.Method != method.Designation || s.Edition != method.Edition || s.Quantity != q))];

    public static PrecisionStatement Statement(PrecisionLine line) => PrecisionInForce.Statement(line.Entry);

    private static string Step(PressureUnit unit)
    {
        var step = 1m;
        for (var place = 0; place < PressureResolution.Places(unit); place++)
            step /= 10m;
        return $"{Rounding.Plain(step)} {unit.Symbol()}";
    }
}
