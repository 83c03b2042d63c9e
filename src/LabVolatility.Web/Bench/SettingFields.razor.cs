using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>How the instrument was set for a triple expansion; recorded with each determination.</summary>
public sealed partial class SettingFields : ComponentBase
{
    [Parameter, EditorRequired]
    public ExpansionSettings Settings { get; set; } = null!;

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

    private string IntroductionHint => $"{Settings.UsualIntroduction} is usual; up to {Settings.HighestIntroduction}";

    private string RinseHint => $"{Settings.RinseCycles} by common practice";
}
