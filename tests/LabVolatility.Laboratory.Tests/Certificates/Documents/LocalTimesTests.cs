using LabVolatility.Laboratory.Certificates.Documents;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

public sealed class LocalTimesTests
{
    private static readonly LocalTimes Prague = new("Europe/Prague");

    // On 2026-10-25 the clock goes back from 03:00 to 02:00: that hour comes twice and is shown with its offset.
    [Theory]
    [InlineData("2026-10-24T23:30Z", "2026-10-25 01:30")]
    [InlineData("2026-10-25T00:30Z", "2026-10-25 02:30 +02:00")]
    [InlineData("2026-10-25T01:30Z", "2026-10-25 02:30 +01:00")]
    [InlineData("2026-10-25T02:30Z", "2026-10-25 03:30")]
    [InlineData("2026-01-01T00:00+05:00", "2025-12-31 20:00")]
    public void At_Instant_AsTheLaboratorysClockShows(string instant, string expected) =>
        Assert.Equal(expected, Prague.At(DateTimeOffset.Parse(instant, System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void AtWithZone_Winter_NamesOffsetAndZone() => Assert.Equal(
        "2026-01-15 13:00 +01:00 (Europe/Prague)",
        Prague.AtWithZone(new DateTimeOffset(2026, 1, 15, 12, 0, 0, TimeSpan.Zero)));
}
