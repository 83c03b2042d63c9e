using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Samples;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Instruments;

public sealed class InstrumentLabelTests
{
    [Theory]
    [InlineData("VP-1", "XVP1")]
    [InlineData("vp 12", "XVP12")]
    public void Label_OfACode_HasOnlyLettersAndDigitsAndItsCheckCharacter(string code, string body)
    {
        var label = InstrumentLabel.For(code);

        Assert.StartsWith(body, label, StringComparison.Ordinal);
        Assert.Equal(body.Length + 1, label!.Length);
        Assert.True(CheckCharacter.Fits(label.AsSpan(1)));
    }

    [Theory]
    [InlineData("RIG-1")]
    [InlineData("Y-1")]
    [InlineData("--")]
    [InlineData("")]
    public void Label_OfACodeWithLettersThatAreMisread_IsNone(string code) => Assert.Null(InstrumentLabel.For(code));

    [Fact]
    public void Scan_OfTheLabelOrTheTypedCode_NamesTheInstrument()
    {
        var label = InstrumentLabel.For("VP-1")!;
        var misread = label[..^1] + (label[^1] == '0' ? '1' : '0');

        Assert.True(InstrumentLabel.Names(label.ToLowerInvariant(), "VP-1"));
        Assert.True(InstrumentLabel.Names(" vp-1 ", "VP-1"));
        Assert.False(InstrumentLabel.Names(misread, "VP-1"));
        Assert.False(InstrumentLabel.Names(label, "VP-2"));
        Assert.False(InstrumentLabel.Names(null, "VP-1"));
    }
}
