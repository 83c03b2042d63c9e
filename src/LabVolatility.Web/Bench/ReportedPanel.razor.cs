using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Bench;

/// <summary>What was stored, and what comes next.</summary>
public sealed partial class ReportedPanel : ComponentBase
{
    /// <summary>The test as it stands after the report.</summary>
    [Parameter, EditorRequired]
    public BenchTest Test { get; set; } = null!;

    [Parameter, EditorRequired]
    public ReportedDetermination Reported { get; set; } = null!;

    /// <summary>Starts the next determination of the same test.</summary>
    [Parameter, EditorRequired]
    public EventCallback Again { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;

    [Inject]
    private Browser Browser { get; set; } = null!;

    private int? Offered => Test.Containers.FirstOrDefault(c => c.WhyNot is null)?.Container.Number;

    // The report button is gone: the focus goes on to what comes next.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && RendererInfo.IsInteractive)
            await Browser.FocusAsync(Test.Test.State == TestState.Waiting && Offered is not null ? "again" : Test.Next is not null ? "next" : "to-sample");
    }

    private string Coming
    {
        get
        {
            var made = Test.Made.Count(d => d.DoesNotCount is null);
            if (Test.Test.State != TestState.Waiting)
                return $"this test is done, {made} of {Test.Test.Wanted} made. {Reported.Next}";
            var left = Math.Max(Test.Test.Wanted - made, 0);
            var wanted = made == 1 && left == 1 ? "the duplicate is due."
                : left > 0 ? $"{left} further {(left == 1 ? "determination is" : "determinations are")} due. {Reported.Next}"
                : Reported.Next ?? "the results disagree: find the cause before going on.";
            return Offered is null ? $"{wanted} No sealed bottle is left for it: ask for a new sample." : wanted;
        }
    }
}
