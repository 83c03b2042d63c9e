using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>What a limit grants by a table, drawn against the ethanol content and listed.</summary>
public sealed partial class AllowanceDrawing : ComponentBase
{
    private const decimal Left = 44m;
    private const decimal Right = 400m;
    private const decimal Top = 26m;
    private const decimal Base = 150m;

    /// <summary>A limit whose allowance follows a table.</summary>
    [Parameter, EditorRequired]
    public Limit Limit { get; set; } = null!;

    private TableAllowance Table => (TableAllowance)Limit.Allowance;

    private IReadOnlyList<AllowancePoint> Points => Table.Points;

    private int Places => Points.Max(p => (int)Rounding.Trim(p.Amount).Scale);

    private decimal Low => Points[0].EthanolPercent;

    private decimal High => Points[^1].EthanolPercent;

    private decimal Highest => Points.Max(p => p.Amount);

    private string Line => string.Join(" ", Points.Select(p => $"{StripBar.At(X(p.EthanolPercent))},{StripBar.At(Y(p.Amount))}"));

    private string Spoken => string.Join(", ", Points.Select(p => $"{Plain(p.EthanolPercent)} %: {Plain(p.Amount)}"));

    private static string Plain(decimal value) => Rounding.Plain(value);

    private decimal X(decimal ethanol) => Left + (ethanol * (Right - Left) / High);

    private decimal Y(decimal amount) => Base - (amount * (Base - Top) / Highest);
}
