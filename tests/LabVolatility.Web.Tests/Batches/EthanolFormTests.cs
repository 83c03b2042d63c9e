using Bunit;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Batches;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Tests.Setup;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

public sealed class EthanolFormTests : BunitContext, IClassFixture<PeopledHost>
{
    public EthanolFormTests(PeopledHost peopled) => Services.AddSingleton(peopled.Host.Services.GetRequiredService<LabClock>());

    [Fact]
    public void EthanolForm_BatchChangedByAnother_KeepsWhatWasTypedAndTellsBothValues()
    {
        var form = Render<EthanolForm>(p => p.Add(f => f.Batch, Batch(null)));
        form.FindAll("input")[0].Change("9.8");
        form.FindAll("input")[1].Change("EN 13132");

        form.Render(p => p.Add(f => f.Batch, Batch(9.6m)));

        Assert.Equal("9.8", form.FindAll("input")[0].GetAttribute("value"));
        Assert.Contains("is 9.6 % by EN 1601 now; you typed 9.8 % by EN 13132", form.Find("[role=status]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void EthanolForm_BatchChangedWhileUntouched_ShowsWhatIsThereNow()
    {
        var form = Render<EthanolForm>(p => p.Add(f => f.Batch, Batch(null)));

        form.Render(p => p.Add(f => f.Batch, Batch(9.6m)));

        Assert.Equal("9.6", form.FindAll("input")[0].GetAttribute("value"));
        Assert.Empty(form.FindAll("[role=status]"));
    }

    private static Batch Batch(decimal? ethanol) => new()
    {
        Number = "26-1042", GradeCode = "G95", EthanolPercent = ethanol, EthanolMethod = ethanol is null ? null : "EN 1601", Version = Guid.NewGuid(),
    };
}
