using Bunit;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.Batches;
using LabVolatility.Web.Tests.Layout;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

/// <summary>A hand-over note: offered to whom it is for, late when it is late.</summary>
public sealed class HandoverCardTests : BunitContext
{
    private static readonly DateTimeOffset Now = new(2026, 5, 4, 8, 0, 0, TimeSpan.Zero);

    public HandoverCardTests() => Services.AddSingleton(LabClocks.At(Now));

    [Fact]
    public void Open_ForTheShiftChemist_IsOffered() => Assert.Single(Draw(Note(Sheets.Analyst), Sheets.Chemist).FindAll("button"));

    [Fact]
    public void Open_ForItsWriterOrAnAnalyst_IsNotOffered()
    {
        Assert.Empty(Draw(Note(Sheets.Chemist), Sheets.Chemist).FindAll("button"));
        Assert.Empty(Draw(Note(Sheets.Chemist), Sheets.Analyst).FindAll("button"));
    }

    [Fact]
    public void Taken_ForAnybody_SaysByWhomAndWhen()
    {
        var card = Draw(Note(Sheets.Analyst, taken: new HandoverTaken { By = Sheets.Chemist.Id, ByName = Sheets.Chemist.Name, At = Now }), Sheets.Manager);

        Assert.Contains("taken by Tomas Lind, 2026-05-04", card.Markup, StringComparison.Ordinal);
        Assert.Empty(card.FindAll("button"));
    }

    [Theory, InlineData(-1, 1), InlineData(1, 0)]
    public void Open_PastItsTime_IsLate(int hours, int late) =>
        Assert.Equal(late, Draw(Note(Sheets.Analyst, Now.AddHours(hours)), Sheets.Chemist).FindAll(".late").Count);

    private static HandoverNote Note(Actor by, DateTimeOffset? due = null, HandoverTaken? taken = null) => new()
    {
        Id = Guid.NewGuid(),
        Text = "Ring the jetty before six.",
        By = by.Id,
        ByName = by.Name,
        At = Now.AddHours(-2),
        DueAt = due,
        Taken = taken,
    };

    private IRenderedComponent<HandoverCard> Draw(HandoverNote note, Actor actor) =>
        Render<HandoverCard>(card => card.Add(c => c.Note, note).Add(c => c.Actor, actor));
}
