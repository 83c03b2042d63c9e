using Bunit;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

public sealed class ProblemSummaryTests : BunitContext
{
    [Fact]
    public void ProblemSummary_ProblemOfAField_LinksToIt()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        SetRendererInfo(new Microsoft.AspNetCore.Components.RendererInfo("Server", isInteractive: true));
        IReadOnlyList<Problem> problems = [new("/readings/totalPressure", "Give the total pressure."), new("", "The sample is void.")];

        var summary = Render<ProblemSummary>(p => p.Add(s => s.Problems, problems));

        Assert.Equal("alert", summary.Find(".summary").GetAttribute("role"));
        Assert.Equal("field-readings-totalPressure", summary.Find("a").GetAttribute("data-field"));
        Assert.Equal(2, summary.FindAll("li").Count);
        JSInterop.VerifyFocusAsyncInvoke();
    }

    [Fact]
    public void ProblemSummary_NoProblem_ShowsNothing()
    {
        var summary = Render<ProblemSummary>(p => p.Add(s => s.Problems, []));

        Assert.Empty(summary.Markup.Trim());
    }
}
