using CsCheck;
using LabVolatility.Core.Assessment;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Assessment;

public sealed class NormalDeviateTests
{
    // Standard normal quantiles to 12 decimals (tabulated in any handbook; ASTM D3244 prints three of them).
    public static TheoryData<double, double> Quantiles => new()
    {
        { 0.05, -1.644853626951 }, { 0.10, -1.281551565545 }, { 0.25, -0.674489750196 }, { 0.50, 0.0 }, { 0.75, 0.674489750196 },
        { 0.90, 1.281551565545 }, { 0.95, 1.644853626951 }, { 0.975, 1.959963984540 }, { 0.99, 2.326347874041 }, { 0.999, 3.090232306168 },
        { 0.9999, 3.719016485456 }, { 0.000001, -4.753424308823 },
    };

    // The D column of ASTM D3244 as our facts give it.
    public static TheoryData<double, decimal> Printed => new()
    {
        { 0.05, -1.645m }, { 0.10, -1.282m }, { 0.25, -0.674m }, { 0.50, 0m }, { 0.75, 0.674m },
        { 0.90, 1.282m }, { 0.95, 1.645m }, { 0.975, 1.960m }, { 0.99, 2.326m }, { 0.999, 3.090m },
    };

    // JCGM 106:2012 examples (from memory) and ILAC-G8:09/2019 risks (worked), four decimals.
    public static TheoryData<string, decimal?, decimal?, decimal, decimal, decimal> Risks
    {
        get
        {
            var rows = new TheoryData<string, decimal?, decimal?, decimal, decimal, decimal>();
            foreach (var row in Rows.Of("Assessment.probability-beyond"))
                rows.Add(row[0], row[1].NumberOrNone(), row[2].NumberOrNone(), row[3].Number(), row[4].Number(), row[5].Number());
            return rows;
        }
    }

    [Theory, MemberData(nameof(Quantiles))]
    public void Of_Probability_IsWithinOneInABillion(double probability, double expected) =>
        Assert.Equal(expected, NormalDeviate.Of(probability), 1e-11);

    [Theory, MemberData(nameof(Printed))]
    public void Of_D3244_IsThePrintedDeviate(double probability, decimal expected) =>
        Assert.Equal(expected, Rounding.ToPlaces((decimal)NormalDeviate.Of(probability), 3));

    [Fact]
    public void UpperTail_OfItsInverse_IsTheProbability() =>
        Gen.Double[1e-9, 1.0 - 1e-9].Sample(p => Math.Abs(1.0 - NormalDeviate.UpperTail(NormalDeviate.Of(p)) - p) < 1e-13);

    // The two ways of working it out meet at three standard deviations.
    [Fact]
    public void UpperTail_WhereItsFormsMeet_HasNoStep()
    {
        var below = NormalDeviate.UpperTail(Math.BitDecrement(3.0));

        Assert.Equal(0.00134989803163, NormalDeviate.UpperTail(3.0), 1e-15);
        Assert.Equal(NormalDeviate.UpperTail(3.0), below, 1e-15);
    }

    [Theory, InlineData(0.0), InlineData(1.0), InlineData(-0.1), InlineData(double.NaN)]
    public void Of_NoProbability_IsRefused(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NormalDeviate.Of(probability));

    [Theory, MemberData(nameof(Risks))]
    public void ProbabilityBeyond_PublishedExample_AgreesToFourPlaces(string id, decimal? minimum, decimal? maximum, decimal y, decimal u, decimal expected)
    {
        Assert.NotEmpty(id);
        Assert.Equal(expected, Rounding.ToPlaces(Uncertainty.ProbabilityBeyond(y, minimum, maximum, u), 4));
    }
}
