using LabVolatility.Core.Blending;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Blending;

public sealed class NominalEthanolTests
{
    // By the definition of a volume fraction.
    [Theory]
    [InlineData("900", "100", "10"), InlineData("450", "50", "10"), InlineData("902", "98", "9.8"), InlineData("500", "0", "0")]
    public void Of_Volumes_IsTheFraction(string blendstock, string ethanol, string expected) =>
        Assert.Equal(Number(expected), NominalEthanol.Of(Millilitres(blendstock), Millilitres(ethanol)).Value);

    [Fact]
    public void Of_UnlikeUnits_IsTheSame() =>
        Assert.Equal(10m, NominalEthanol.Of(Volume.From(0.9m, VolumeUnit.Litre), Volume.From(100m, VolumeUnit.Millilitre)).Value);

    [Fact]
    public void Of_Nothing_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NominalEthanol.Of(Millilitres("0"), Millilitres("0")));

    private static Volume Millilitres(string number) => Volume.From(Number(number), VolumeUnit.Millilitre);

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
