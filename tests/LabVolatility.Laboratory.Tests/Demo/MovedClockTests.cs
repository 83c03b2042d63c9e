using LabVolatility.Laboratory.Demo;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Demo;

public sealed class MovedClockTests
{
    private static readonly DateTimeOffset Start = new(2026, 5, 4, 8, 0, 0, TimeSpan.FromHours(2));

    [Fact]
    public void MoveTo_Later_StandsThereInUtc()
    {
        var clock = new MovedClock(Start);

        clock.MoveTo(Start.AddHours(1));

        Assert.Equal(Start.AddHours(1), clock.GetUtcNow());
        Assert.Equal(TimeSpan.Zero, clock.GetUtcNow().Offset);
    }

    [Fact]
    public void MoveTo_Earlier_IsAMistake() =>
        Assert.Throws<InvalidOperationException>(() => new MovedClock(Start).MoveTo(Start.AddSeconds(-1)));
}
