using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Limits;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>The limits of an area as laid down, before any allowance.</summary>
public sealed partial class LimitTable : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<AreaLimit> Limits { get; set; } = [];

    [Parameter]
    public string Caption { get; set; } = "Limits";

    /// <summary>A note that stands above the table and isn't said again.</summary>
    [Parameter]
    public string? Said { get; set; }

    [Parameter]
    public IReadOnlyList<ConfirmedFact> Confirmed { get; set; } = [];

    /// <summary>Whether the person may confirm a shipped limit.</summary>
    [Parameter]
    public bool MayConfirm { get; set; }

    /// <summary>Raised with the key of a limit that the person wants to confirm.</summary>
    [Parameter]
    public EventCallback<string> Wanted { get; set; }

    private int Places => Limits.Count == 0 ? 1 : Limits.Max(l => l.Limit.Digits);

    private static bool Confirmable(Limit limit) =>
        limit.Status == FactStatus.FromMemory && PublishedAreas.All.SelectMany(a => a.Limits).Any(l => l.Limit.Key == limit.Key);

    private static string HoldsFor(AreaLimit line)
    {
        var words = new[]
        {
            line.Grade ?? "all gasoline",
            line.Point?.Text() ?? "",
            line.Season is null ? "" : $"season {line.Season}",
            line.Class is null ? "" : $"class {line.Class}",
            line.Limit is { EffectiveFrom: null, EffectiveUntil: null } ? "" : LimitWords.Days(line.Limit.EffectiveFrom, line.Limit.EffectiveUntil),
        };
        return string.Join(", ", words.Where(w => w.Length > 0));
    }

    private static string? Shown(decimal? edge, Limit limit) => edge is { } value ? Rounding.Text(value, limit.Digits) : null;
}
