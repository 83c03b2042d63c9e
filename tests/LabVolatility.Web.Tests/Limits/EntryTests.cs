using LabVolatility.Core.Limits;
using LabVolatility.Web.Limits;
using Xunit;

namespace LabVolatility.Web.Tests.Limits;

public sealed class EntryTests
{
    [Fact]
    public void LimitEntry_TypedWithComma_IsTheLimitMeant()
    {
        var entry = new LimitEntry { Key = "C/RVP", Measured = "RVP|EPA", Maximum = "8,9", Unit = "psi", Source = "contract 4", From = "2026-05-01" };

        var limit = entry.Read("US-9.0", out var problems);

        Assert.Empty(problems);
        Assert.Equal(("RVP", "EPA", 8.9m, (decimal?)null), (limit!.Quantity, limit.Correlation, limit.Maximum, limit.Minimum));
    }

    [Fact]
    public void LimitEntry_UnreadableFields_AreNamedAllAtOnce()
    {
        var entry = new LimitEntry { Maximum = "sixty", Digits = "one", From = "1 May", Until = "soon" };

        Assert.Null(entry.Read("EN228-A", out var problems));
        Assert.Equal(["/key", "/maximum", "/digits", "/source", "/effectiveFrom", "/effectiveUntil"], problems.Select(p => p.Field));
    }

    [Fact]
    public void LimitEntry_OfAVersion_ComesBackAsItWas()
    {
        var entry = new LimitEntry { Key = "C/DVPE", Minimum = "45.0", Maximum = "60.0", Source = "contract 4", From = "2026-05-01", Standing = "internal" };
        var limit = entry.Read("EN228-A", out _)!;

        var again = LimitEntry.Of(limit);

        Assert.Equal(("45.0", "60.0", "DVPE|", "internal"), (again.Minimum, again.Maximum, again.Measured, again.Standing));
        Assert.Null(again.From);
    }

    [Fact]
    public void AreaEntry_WithoutSeasons_IsRefused()
    {
        var entry = new AreaEntry { Code = "A", Name = "A", Source = "s", From = "2026-05-01" };

        Assert.Null(entry.Read(out var problems));
        Assert.Equal("/calendar", Assert.Single(problems).Field);
    }

    [Fact]
    public void WindowEntry_UnreadableDay_IsNotDrawn()
    {
        var window = new WindowEntry { Season = "summer", FromDay = "31", FromMonth = 6 };

        Assert.Null(window.Drawn());
    }

    [Fact]
    public void AppliesQuestion_Defaults_AskForFinishedAtTheTerminal()
    {
        var query = new AppliesQuestion { Area = "US-9.0", Date = "2026-05-10" }.Read([], out var problems);

        Assert.Empty(problems);
        Assert.Equal(("gasoline", ProductState.Finished, PointOfCompliance.Terminal), (query!.Grade, query.State, query.Point));
    }

    [Fact]
    public void AppliesQuestion_BadDayAndEthanol_AreBothNamed()
    {
        var question = new AppliesQuestion { Area = "US-9.0", Date = "10.05.2026", Ethanol = "much" };

        Assert.Null(question.Read([], out var problems));
        Assert.Equal(["/date", "/ethanol"], problems.Select(p => p.Field));
    }
}
