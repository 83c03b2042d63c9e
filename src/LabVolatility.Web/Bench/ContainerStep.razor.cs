using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>Which bottle, how cold and how full.</summary>
public sealed partial class ContainerStep : ComponentBase
{
    [Parameter, EditorRequired]
    public BenchTest Test { get; set; } = null!;

    [Parameter, EditorRequired]
    public BenchEntry Entry { get; set; } = null!;

    [Parameter]
    public BenchPreview? Preview { get; set; }

    [Parameter, EditorRequired]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Raised with what is changed in the entry as it is then, which may be newer than the one that is drawn.</summary>
    [Parameter, EditorRequired]
    public EventCallback<Func<BenchEntry, BenchEntry>> Changed { get; set; }

    [Parameter]
    public EventCallback<string> Misplaced { get; set; }

    private decimal? Registered => Test.Containers.FirstOrDefault(c => c.Container.Number == Entry.ContainerNumber)?.Container.FillPercent;

    private string FillHint => Registered is { } fill
        ? $"{Rounding.Plain(fill)} % at receipt; type it if it differs"
        : "70 to 80 % asked for";

    private string? FillEcho => Entry.FillPercent is { } typed && Preview?.Handling.FillPercent is { } fill
        ? $"{typed.Trim()} → {Rounding.Plain(fill)} %"
        : null;
}
