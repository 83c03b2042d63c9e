using LabVolatility.Web.Batches;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Tests.Layout;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

/// <summary>What a person types into a hand-over note.</summary>
public sealed class HandoverEntryTests
{
    private readonly LabClock _clock = LabClocks.At(new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero));

    [Fact]
    public void Read_NothingTyped_IsNoNote()
    {
        var entry = new HandoverEntry { Text = " " };

        Assert.Null(entry.Read(_clock));
        Assert.Empty(entry.Problems);
    }

    [Fact]
    public void Read_TimeThatIsNone_IsToldBesideItsField()
    {
        var entry = new HandoverEntry { Text = "Ring the jetty.", DueAt = "at six" };

        entry.Read(_clock);

        Assert.Equal("/handover/dueAt", Assert.Single(entry.Problems).Field);
    }

    [Fact]
    public void Read_TimeWithoutWords_AsksForThem()
    {
        var entry = new HandoverEntry { DueAt = "2026-05-04 18:00" };

        var note = entry.Read(_clock);

        Assert.Equal("/handover/text", Assert.Single(entry.Problems).Field);
        Assert.NotNull(note!.DueAt);
    }
}
