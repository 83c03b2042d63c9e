using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>The gas part of the total pressure: as the instrument gives it, or three expansions.</summary>
public sealed partial class GasFields : ComponentBase
{
    private const int Count = 3;

    [Parameter, EditorRequired]
    public BenchEntry Entry { get; set; } = null!;

    [Parameter]
    public BenchPreview? Preview { get; set; }

    [Parameter, EditorRequired]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter, EditorRequired]
    public EventCallback<Func<BenchEntry, BenchEntry>> Changed { get; set; }

    [Parameter]
    public EventCallback<string> Misplaced { get; set; }

    private ExpansionEntry Row(int at) => RowOf(Entry, at);

    private static ExpansionEntry RowOf(BenchEntry entry, int at) => entry.Expansions.ElementAtOrDefault(at) ?? new ExpansionEntry();

    // What was understood stands in order; only a list without gaps tells which row is which.
    private ExpansionAsTyped? Read(int at) => Preview?.Readings.Expansions is { Count: Count } read ? read[at] : null;

    private Task TakeAsync(int at, Func<ExpansionEntry, ExpansionEntry> change) => Changed.InvokeAsync(e => e with
    {
        Expansions = [.. Enumerable.Range(0, Count).Select(i => i == at ? change(RowOf(e, i)) : RowOf(e, i))],
    });
}
