using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>Precision of editions that are no longer in force, shown for reading.</summary>
public sealed partial class OlderPrecision : ComponentBase
{
    [Parameter, EditorRequired]
    public TestMethod Method { get; set; } = null!;

    private IReadOnlyList<PrecisionStatement> Older => [.. PublishedPrecision.All.Where(s => s.Method == Method.Designation)];

    // The ends are kept in kPa; six decimals bring the printed ones back.
    private static string Levels(PrecisionStatement statement) =>
        statement is { LowKpa: { } low, HighKpa: { } high } ? $"{Printed(low, statement.Unit)} to {Printed(high, statement.Unit)} {statement.Unit.Symbol()}" : "all levels";

    private static string Printed(decimal kpa, PressureUnit unit) =>
        Rounding.Plain(Rounding.ToPlaces(AbsolutePressure.From(kpa, PressureUnit.Kilopascal).In(unit), 6));
}
