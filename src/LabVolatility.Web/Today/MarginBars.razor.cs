using System.Globalization;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Today;
using LabVolatility.Web.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>Margins in parts of R, the oldest at the left: below the line is beyond the limit. The table below has the same numbers.</summary>
public sealed partial class MarginBars : ComponentBase
{
    private const decimal Zero = 104m;
    private const decimal Unit = 32m;
    private const decimal Most = 2.5m;
    private const decimal Step = 54m;
    private const decimal First = 96m;

    [Parameter, EditorRequired]
    public IReadOnlyList<BatchMargin> Margins { get; set; } = [];

    // Batches of unlike units stand side by side: R is the measure that they share.
    private IReadOnlyList<(string Batch, decimal Parts, string Figure)> Bars =>
    [
        .. Margins.Reverse().Where(m => m.Binding is { Margin: not null, Reproducibility: > 0 })
            .Select(m => (m.Batch, m.Binding!.Margin!.Value / m.Binding.Reproducibility!.Value, $"{BatchWords.Margin(m.Binding)} {m.Binding.Unit}")),
    ];

    private string Words => Bars.Count == 0
        ? "No margin can be drawn beside R."
        : "Margin beside R, the oldest first: " + string.Join("; ", Bars.Select(b => $"batch {b.Batch} {b.Figure}"));

    private static string ZeroLine => Number(Zero);

    private static string OneR => Number(Zero - Unit);

    private static decimal Reach(decimal parts) => Unit * Math.Clamp(parts, -0.8m, Most);

    private static string X(int index) => Number(First + (Step * index));

    private static string Middle(int index) => Number(First + 17m + (Step * index));

    private static string Top(decimal parts) => Number(Zero - Math.Max(0m, Reach(parts)));

    private static string Height(decimal parts) => Number(Math.Max(1m, Math.Abs(Reach(parts))));

    private static string Above(decimal parts) => Number(Zero - Math.Max(0m, Reach(parts)) - 4m);

    private static string Label(decimal line) => Number(line - 3m);

    private static string Number(decimal value) => Rounding.ToPlaces(value, 2).ToString(CultureInfo.InvariantCulture);
}
