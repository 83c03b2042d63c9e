using LabVolatility.Laboratory.Samples;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Samples;

public sealed class ScanCodeTests
{
    private const string Typeable = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private static readonly int[] Years = [2000, 2026, 2099];
    private static readonly int[] Serials = [1, 417, 9_090, 12_345, 99_999];

    public static TheoryData<string> Codes => new(
        from serial in Serials
        from year in Years
        let sample = ScanCode.ForSample(year, serial)
        from code in new[] { sample, ScanCode.ForContainer(sample, 1), ScanCode.ForContainer(sample, 87) }
        select code);

    [Fact]
    public void ForSample_YearAndSerial_AreReadable()
    {
        var number = ScanCode.ForSample(2026, 417);

        Assert.StartsWith("S2600417", number, StringComparison.Ordinal);
        Assert.Equal(9, number.Length);
        Assert.True(ScanCode.TryParse(number, out var code));
        Assert.Equal(number, code.SampleNumber);
        Assert.Null(code.ContainerNumber);
    }

    [Fact]
    public void ForContainer_OneToNinetyNine_LeadsBackToItsSample()
    {
        var number = ScanCode.ForSample(2026, 417);

        for (var container = 1; container <= 99; container++)
        {
            Assert.True(ScanCode.TryParse(ScanCode.ForContainer(number, container), out var code));
            Assert.Equal(number, code.SampleNumber);
            Assert.Equal(container, code.ContainerNumber);
        }
    }

    [Theory, MemberData(nameof(Codes))]
    public void TryParse_OneCharacterChanged_Refused(string code)
    {
        for (var at = 0; at < code.Length; at++)
            foreach (var other in Typeable.Where(c => c != code[at]))
                Assert.False(ScanCode.TryParse(code[..at] + other + code[(at + 1)..], out _), $"{code}: {other} at {at}");
    }

    [Theory, MemberData(nameof(Codes))]
    public void TryParse_TwoCharactersSwapped_Refused(string code)
    {
        for (var first = 0; first < code.Length; first++)
            for (var second = first + 1; second < code.Length; second++)
            {
                var characters = code.ToCharArray();
                (characters[first], characters[second]) = (characters[second], characters[first]);
                var swapped = new string(characters);
                Assert.Equal(swapped == code, ScanCode.TryParse(swapped, out _));
            }
    }

    [Theory, MemberData(nameof(Codes))]
    public void TryParse_CutShort_NamesNoOther(string code)
    {
        Assert.True(ScanCode.TryParse(code, out var whole));

        for (var length = 0; length < code.Length; length++)
            if (ScanCode.TryParse(code[..length], out var shorter))
                Assert.Equal((whole.SampleNumber, null), (shorter.SampleNumber, shorter.ContainerNumber));
    }

    [Theory, MemberData(nameof(Codes))]
    public void TryParse_AsScannersSend_Accepted(string code)
    {
        foreach (var sent in new[] { $" {code} ", $"{code}\r\n", $"\u0002{code}\u0003", code.ToLowerInvariant(), $"\t{code}" })
        {
            Assert.True(ScanCode.TryParse(sent, out var parsed));
            Assert.Equal(code, parsed.ToString());
        }
    }

    [Theory, MemberData(nameof(Codes))]
    public void LooksLikeOurs_WholeOrDamaged_True(string code)
    {
        Assert.True(ScanCode.LooksLikeOurs(code));
        Assert.True(ScanCode.LooksLikeOurs(code.ToLowerInvariant() + "\n"));
        Assert.True(ScanCode.LooksLikeOurs("62.4" + code));
        Assert.True(ScanCode.LooksLikeOurs(code[..^1]));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("62.4")]
    [InlineData("62,4 kPa")]
    [InlineData("9.1 psi")]
    [InlineData("101325 Pa")]
    [InlineData("37.8 C")]
    public void LooksLikeOurs_Reading_False(string? text) => Assert.False(ScanCode.LooksLikeOurs(text));

    [Theory]
    [InlineData(1999, 1)]
    [InlineData(2100, 1)]
    [InlineData(2026, 0)]
    [InlineData(2026, 100_000)]
    public void ForSample_OutOfRange_Throws(int year, int serial) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ScanCode.ForSample(year, serial));

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    public void ForContainer_OutOfRange_Throws(int container) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ScanCode.ForContainer(ScanCode.ForSample(2026, 1), container));

    [Fact]
    public void ForContainer_NoSampleNumber_Throws() =>
        Assert.Throws<ArgumentException>(() => ScanCode.ForContainer("S2600417", 1));

    [Fact]
    public void Default_ReadAsText_Empty() => Assert.Equal(string.Empty, default(ScanCode).ToString());
}
