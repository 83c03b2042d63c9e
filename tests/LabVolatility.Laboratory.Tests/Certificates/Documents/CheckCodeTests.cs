using LabVolatility.Laboratory.Certificates.Documents;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

public sealed class CheckCodeTests
{
    private const string Typeable = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    public static TheoryData<string> Codes => new(
        Enumerable.Range(0, 20).Select(seed => CheckCode.From([.. Enumerable.Range(1, 10).Select(i => (byte)(seed * 37 * i * i))])));

    [Theory, MemberData(nameof(Codes))]
    public void From_TenBytes_ReadsBack(string code)
    {
        Assert.Matches("^[0-9A-HJ-NP-RT-X]{4}(-[0-9A-HJ-NP-RT-X]{4}){2}$", code);
        Assert.True(CheckCode.TryParse(code, out var parsed));
        Assert.Equal(code, parsed);
    }

    [Theory, MemberData(nameof(Codes))]
    public void TryParse_AsPeopleType_Accepted(string code)
    {
        var bare = code.Replace("-", "", StringComparison.Ordinal);

        foreach (var typed in new[] { bare, $" {code.ToLowerInvariant()} ", string.Join(' ', bare.Chunk(3).Select(c => new string(c))) })
        {
            Assert.True(CheckCode.TryParse(typed, out var parsed));
            Assert.Equal(code, parsed);
        }
    }

    [Theory, MemberData(nameof(Codes))]
    public void TryParse_OneCharacterChanged_Refused(string code)
    {
        for (var at = 0; at < code.Length; at++)
            foreach (var other in Typeable.Where(c => c != code[at]))
                Assert.False(CheckCode.TryParse(code[..at] + other + code[(at + 1)..], out _), $"{code}: {other} at {at}");
    }

    [Theory, MemberData(nameof(Codes))]
    public void TryParse_TwoCharactersSwapped_Refused(string code)
    {
        var bare = code.Replace("-", "", StringComparison.Ordinal);
        for (var first = 0; first < bare.Length; first++)
            for (var second = first + 1; second < bare.Length; second++)
            {
                var characters = bare.ToCharArray();
                (characters[first], characters[second]) = (characters[second], characters[first]);
                var swapped = new string(characters);
                Assert.Equal(swapped == bare, CheckCode.TryParse(swapped, out _));
            }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("7H2K-9QXB")]
    [InlineData("0000-0000-0000-0")]
    public void TryParse_NoCode_Refused(string? text)
    {
        Assert.False(CheckCode.TryParse(text, out var code));
        Assert.Equal(string.Empty, code);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(9)]
    [InlineData(11)]
    public void From_OtherLength_Throws(int bytes) =>
        Assert.Throws<ArgumentException>(() => CheckCode.From(new byte[bytes]));

    [Fact]
    public void From_OneBitOther_OtherCode()
    {
        var codes = Enumerable.Range(0, 54).Select(bit =>
        {
            var random = new byte[CheckCode.RandomBytes];
            random[^(1 + (bit / 8))] = (byte)(1 << (bit % 8));
            return CheckCode.From(random);
        });

        Assert.Equal(54, codes.Distinct().Count());
    }
}
