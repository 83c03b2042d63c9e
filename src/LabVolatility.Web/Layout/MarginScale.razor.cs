using System.Globalization;
using LabVolatility.Core.Quantities;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>A value between its limits: effective edges, acceptance edges, the zone that can't be decided hatched.</summary>
public sealed partial class MarginScale : ComponentBase
{
    private const decimal Left = 30m;
    private const decimal Span = 360m;

    private readonly string _hatch = $"hatch-{Guid.NewGuid():N}";

    /// <summary>Effective minimum, in <see cref="Unit"/>; null where there is none.</summary>
    [Parameter]
    public decimal? Minimum { get; set; }

    [Parameter]
    public decimal? Maximum { get; set; }

    /// <summary>The inner edge above the minimum that a guarded rule demands.</summary>
    [Parameter]
    public decimal? AcceptanceMinimum { get; set; }

    [Parameter]
    public decimal? AcceptanceMaximum { get; set; }

    [Parameter]
    public decimal? Value { get; set; }

    [Parameter, EditorRequired]
    public string Unit { get; set; } = "";

    /// <summary>Decimals of the limit.</summary>
    [Parameter]
    public int Digits { get; set; } = 1;

    private IEnumerable<decimal> Limits => Given(Minimum, Maximum);

    private IEnumerable<decimal> Edges => Given(AcceptanceMinimum, AcceptanceMaximum);

    private decimal Low => Reach().Low;

    private decimal High => Reach().High;

    /// <summary>Between the acceptance edge and its mirror image beyond the limit nothing can be decided.</summary>
    private IEnumerable<(decimal From, decimal Until)> Undecided
    {
        get
        {
            if (Minimum is { } minimum && AcceptanceMinimum is { } inner && inner > minimum)
                yield return (Math.Max(Low, minimum - (inner - minimum)), inner);
            if (Maximum is { } maximum && AcceptanceMaximum is { } below && below < maximum)
                yield return (below, Math.Min(High, maximum + (maximum - below)));
        }
    }

    private string Words
    {
        get
        {
            var parts = new List<string>();
            if (Value is { } value)
                parts.Add($"value {Shown(value)} {Unit}");
            if (Minimum is { } minimum)
                parts.Add($"minimum {Shown(minimum)}");
            if (Maximum is { } maximum)
                parts.Add($"maximum {Shown(maximum)}");
            if (AcceptanceMinimum is { } inner)
                parts.Add($"accepted from {Shown(inner)}");
            if (AcceptanceMaximum is { } below)
                parts.Add($"accepted up to {Shown(below)}");
            return parts.Count == 0 ? "no limit" : string.Join(", ", parts);
        }
    }

    private static IEnumerable<decimal> Given(params decimal?[] values) => values.OfType<decimal>();

    private (decimal Low, decimal High) Reach()
    {
        var all = Given(Minimum, Maximum, AcceptanceMinimum, AcceptanceMaximum, Value).ToList();
        if (all.Count == 0)
            return (0m, 1m);
        var room = Math.Max((all.Max() - all.Min()) * 0.2m, 0.5m);
        return (all.Min() - room, all.Max() + room);
    }

    private string X(decimal value) => Number(Place(value));

    private string Width(decimal from, decimal until) => Number(Math.Max(0m, Place(until) - Place(from)));

    private decimal Place(decimal value) => Left + (Span * (Math.Clamp(value, Low, High) - Low) / (High - Low));

    private string Line(decimal value, int top, int bottom) => $"M{X(value)} {top}V{bottom}";

    private string Pointer(decimal value) => $"M{X(value)} 34l-6 -9 6 -9 6 9z";

    private string Shown(decimal value) => Rounding.Text(value, Digits);

    private static string Number(decimal value) => Rounding.ToPlaces(value, 2).ToString(CultureInfo.InvariantCulture);
}
