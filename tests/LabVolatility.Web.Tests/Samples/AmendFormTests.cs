using Bunit;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Web.Samples;
using Xunit;

namespace LabVolatility.Web.Tests.Samples;

public sealed class AmendFormTests : BunitContext
{
    private static readonly Guid Id = Guid.NewGuid();

    [Fact]
    public void AmendForm_AmendedByAnother_KeepsWhatWasTypedAndTellsWhatIsThere()
    {
        AmendDetermination.Request? sent = null;
        var form = Render<AmendForm>(p => p.Add(f => f.One, State("62.1")).Add(f => f.Amended, request => sent = request));
        Field(form, "pressure").Change("62.3");
        Field(form, "reason").Change("read again");

        form.Render(p => p.Add(f => f.One, State("62.1", "62.2")));

        Assert.Equal("62.3", Field(form, "pressure").GetAttribute("value"));
        Assert.Contains("Oskar Brandt amended it meanwhile", form.Find(".notice").TextContent, StringComparison.Ordinal);
        Assert.True(form.Find("button.grave").HasAttribute("disabled"));

        form.Find(".notice button").Click();
        form.Find("button.grave").Click();

        Assert.Equal((2, "62.3"), (sent!.ExpectedRevision, sent.Readings!.TotalPressure!.Typed));
    }

    [Fact]
    public void AmendForm_AmendedByAnotherWhileUntouched_ShowsWhatIsThereNow()
    {
        var form = Render<AmendForm>(p => p.Add(f => f.One, State("62.1")));

        form.Render(p => p.Add(f => f.One, State("62.1", "62.2")));

        Assert.Equal("62.2 kPa", Field(form, "pressure").GetAttribute("value"));
        Assert.Empty(form.FindAll(".notice"));
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<AmendForm> form, string name) => form.Find($"#amend-{name}-{Id:N}");

    private static DeterminationState State(params string[] pressures) => new()
    {
        Id = Id,
        SampleId = Guid.NewGuid(),
        ContainerId = Guid.NewGuid(),
        TestId = null,
        ContainerNumber = 1,
        ContainerKind = ContainerKind.GlassBottle,
        ContainerMillilitres = 1000m,
        Method = "EN 13016-1",
        Edition = "2024",
        Instrument = "VP-1",
        MeasuredAt = default,
        MeasurerId = null,
        Measurer = null,
        RecordedAt = default,
        Results = [],
        Revisions = [.. pressures.Select((pressure, at) => new DeterminationRevision
        {
            Revision = at + 1,
            ByName = "Oskar Brandt",
            Reason = at == 0 ? null : "digits swapped",
            Readings = new ReadingsAsTyped
            {
                TotalPressure = new TypedReading(pressure, decimal.Parse(pressure, System.Globalization.CultureInfo.InvariantCulture), "kPa"),
                Temperature = new TypedReading("37.8", 37.8m, "degC"),
            },
            Handling = new HandlingAsTyped(),
        })],
    };
}
