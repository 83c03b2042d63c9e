using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Bench;

public sealed class SurprisingReadingTests
{
    // Twenty total pressures between 58.0 and 64.0 kPa, as in usability row U-44: common practice, no measured data.
    private static readonly decimal[] Last = [.. Enumerable.Range(0, 20).Select(i => 58.0m + (i * 6.0m / 19m))];

    // Worked by hand: the neighbours of 26.1 are 62.1 and 21.6, of which only 62.1 lies in 58 to 64. 6.31 and 631 need
    // the mark moved by one. 0.92 psi are 6.3 kPa, 9.2 psi are 63.4 kPa. 30.0 fits in no way.
    public static TheoryData<decimal, string, string> Slips => new()
    {
        { 26.1m, "kPa", "Digits swapped? 62.1 kPa would fit." },
        { 16.3m, "kPa", "Digits swapped? 61.3 kPa would fit." },
        { 6.31m, "kPa", "Decimal mark? 63.1 kPa would fit." },
        { 631m, "kPa", "Decimal mark? 63.1 kPa would fit." },
        { 0.92m, "psi", "Decimal mark? 9.2 psi would fit." },
        { 30.0m, "kPa", "Look at the digits and the bottle once more." },
    };

    // The last ones spread over 6 kPa: as much to either side is no surprise.
    public static TheoryData<decimal> Usual => [58.0m, 64.0m, 52.0m, 70.0m];

    [Theory, MemberData(nameof(Slips))]
    public void Words_FarFromTheLastOnes_AskAboutTheLikelySlip(decimal typed, string unit, string asked)
    {
        var words = SurprisingReading.Words(Pressure(typed, unit), Last, "G95");

        Assert.StartsWith("The last 20 of G95 read 58.0 to 64.0 kPa; this one is ", words, StringComparison.Ordinal);
        Assert.EndsWith(asked, words, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Usual))]
    public void Words_NearTheLastOnes_AreNone(decimal typed) =>
        Assert.Null(SurprisingReading.Words(Pressure(typed, "kPa"), Last, "G95"));

    [Fact]
    public void Words_TooFewToCompareWith_AreNone() =>
        Assert.Null(SurprisingReading.Words(Pressure(26.1m, "kPa"), [.. Last.Take(7)], "G95"));

    [Fact]
    public void Words_LastOnesAllAlike_LeaveTwoKilopascals()
    {
        decimal[] alike = [.. Enumerable.Repeat(60.0m, 8)];

        Assert.Null(SurprisingReading.Words(Pressure(62.0m, "kPa"), alike, "G95"));
        Assert.NotNull(SurprisingReading.Words(Pressure(62.1m, "kPa"), alike, "G95"));
    }

    private static AbsolutePressure Pressure(decimal value, string unit) =>
        PressureUnits.TryParse(unit, out var known) ? AbsolutePressure.From(value, known) : throw new ArgumentException(unit, nameof(unit));
}
