using CsCheck;
using LabVolatility.Core.Limits;
using Xunit;

namespace LabVolatility.Core.Tests.Limits;

public sealed class EffectiveLimitTests
{
    private static readonly Limit Bioethanol = Find("EN228-A-W");
    private static readonly Limit Federal = Find("US-9.0");

    // Directive 98/70/EC, annex III as amended by 2011/63/EU: ethanol, allowance, and the summer maximum it makes.
    public static TheoryData<decimal, decimal, decimal> Points => new()
    {
        { 0m, 0m, 60.0m }, { 1m, 3.7m, 63.7m }, { 2m, 6.0m, 66.0m }, { 3m, 7.2m, 67.2m }, { 4m, 7.8m, 67.8m }, { 5m, 8.0m, 68.0m },
        { 6m, 8.0m, 68.0m }, { 7m, 7.9m, 67.9m }, { 8m, 7.9m, 67.9m }, { 9m, 7.8m, 67.8m }, { 10m, 7.8m, 67.8m },
        { 2.5m, 6.6m, 66.6m }, { 5.5m, 8.0m, 68.0m }, { 7.25m, 7.9m, 67.9m }, { 0.5m, 1.85m, 61.8m }, { 1.5m, 4.85m, 64.8m },
    };

    [Theory, MemberData(nameof(Points))]
    public void Maximum_ByTheTable_IsInterpolated(decimal ethanol, decimal allowance, decimal maximum)
    {
        var effective = EffectiveLimit.Maximum(Bioethanol, ProductState.Finished, ethanol, derogation: true);

        Assert.Equal((allowance, maximum), (effective.Allowance, effective.Maximum));
    }

    // 40 CFR 1090.215(b): 9 to 10 vol %, both ends included.
    [Theory]
    [InlineData("8.99", "9.0"), InlineData("9", "10.0"), InlineData("9.8", "10.0"), InlineData("10", "10.0"), InlineData("10.01", "9.0"), InlineData("0", "9.0")]
    public void Maximum_InsideTheWindow_GetsOnePsi(string ethanol, string maximum) =>
        Assert.Equal(maximum.Number(), EffectiveLimit.Maximum(Federal, ProductState.Finished, ethanol.Number(), derogation: false).Maximum);

    [Fact]
    public void Maximum_HandBlend_GetsTheAllowance() =>
        Assert.Equal(10.0m, EffectiveLimit.Maximum(Federal, ProductState.HandBlend, 10m, derogation: false).Maximum);

    [Fact]
    public void Maximum_WithoutGround_SaysWhy()
    {
        Assert.Contains("blendstock", Refused(Federal, ProductState.Blendstock, 9.8m, true), StringComparison.Ordinal);
        Assert.Contains("wasn't measured", Refused(Federal, ProductState.Finished, null, true), StringComparison.Ordinal);
        Assert.Contains("derogation", Refused(Bioethanol, ProductState.Finished, 5m, false), StringComparison.Ordinal);
        Assert.Contains("outside 0 to 10", Refused(Bioethanol, ProductState.Finished, 10.1m, true), StringComparison.Ordinal);
        Assert.Contains("outside 9 to 10", Refused(Federal, ProductState.Finished, 8.9m, true), StringComparison.Ordinal);
    }

    [Fact]
    public void Maximum_AnyEthanol_IsNeverBelowTheBase() =>
        Gen.Decimal[0m, 12m].Sample(ethanol =>
            EffectiveLimit.Maximum(Bioethanol, ProductState.Finished, ethanol, derogation: true).Maximum is >= 60.0m and <= 68.0m);

    private static string Refused(Limit limit, ProductState state, decimal? ethanol, bool derogation)
    {
        var effective = EffectiveLimit.Maximum(limit, state, ethanol, derogation);
        Assert.Null(effective.Allowance);
        Assert.Equal(limit.Maximum, effective.Maximum);
        return effective.Why;
    }

    private static Limit Find(string code) => PublishedAreas.All.Single(a => a.Code == code).Limits[0].Limit;
}
