using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Methods;

/// <summary>r and R of precision statements at a level that a person types.</summary>
public sealed partial class WorkedExample : ComponentBase
{
    private string? _typed;
    private string? _problem;
    private AbsolutePressure? _level;

    [Parameter, EditorRequired]
    public IReadOnlyList<PrecisionStatement> Statements { get; set; } = [];

    /// <summary>The pointer that gives the field its id.</summary>
    [Parameter]
    public string Field { get; set; } = "/example";

    internal static IEnumerable<(string What, string Words)> Lines(PrecisionStatement statement, AbsolutePressure level)
    {
        var what = $"{statement.Quantity}, {MethodWords.Container(statement.Container, statement.ContainerMillilitres)}, {statement.Unit.Symbol()}";
        if (!statement.Covers(level))
        {
            yield return (what, $"{level} is outside {MethodWords.Range(statement.LowKpa, statement.HighKpa)}: no precision there");
            yield break;
        }

        yield return ($"r of {what}", At(statement.Repeatability, statement, level));
        yield return ($"R of {what}", At(statement.Reproducibility, statement, level));
    }

    private static string At(LinearForm? form, PrecisionStatement statement, AbsolutePressure level) => form is null
        ? "not set"
        : $"{MethodWords.Form(form)} = {Rounding.Shown(form.At(level.In(statement.Unit)))} {statement.Unit.Symbol()} at X = {Rounding.Shown(level.In(statement.Unit))} {statement.Unit.Symbol()}";

    private IEnumerable<(string What, string Words)> Lines(AbsolutePressure level) => Statements.SelectMany(s => Lines(s, level));

    private void Read()
    {
        (_problem, _level) = (null, null);
        if (!string.IsNullOrWhiteSpace(_typed) && QuantityText.TryReadPressure(_typed, PressureUnit.Kilopascal, out var level, out _problem))
            _level = level;
    }
}
