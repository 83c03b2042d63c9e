using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>What a limit grants for ethanol, drawn against the content, and listed where it follows a table.</summary>
public sealed partial class AllowanceDrawing : ComponentBase
{
    private const decimal Left = 44m;
    private const decimal Right = 400m;
    private const decimal Top = 18m;
    private const decimal Base = 150m;

    [Parameter, EditorRequired]
    public Limit Limit { get; set; } = null!;

    private Allowance Allowance => Limit.Allowance;

    // A fixed allowance is drawn as the level line over its window.
    private IReadOnlyList<AllowancePoint> Points => Allowance switch
    {
        TableAllowance table => table.Points,
        FixedAllowance window => [new(window.EthanolLow, window.Amount), new(window.EthanolHigh, window.Amount)],
        _ => [],
    };

    private decimal Low => Points[0].EthanolPercent;

    private decimal High => Points[^1].EthanolPercent;

    private decimal Highest => Points.Max(p => p.Amount);

    private string Line => string.Join(" ", Points.Select(p => $"{StripBar.At(X(p.EthanolPercent))},{StripBar.At(Y(p.Amount))}"));

    private string Spoken => string.Join(", ", Points.Select(p => $"{Plain(p.EthanolPercent)} %: {Plain(p.Amount)}"));

    private static string Plain(decimal value) => Rounding.Plain(value);

    private decimal X(decimal ethanol) => Left + (ethanol * (Right - Left) / High);

    private decimal Y(decimal amount) => Base - (amount * (Base - Top) / Highest);
}
