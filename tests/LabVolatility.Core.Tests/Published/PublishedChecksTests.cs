using LabVolatility.Core.Methods;
using LabVolatility.Core.Published;
using Xunit;

namespace LabVolatility.Core.Tests.Published;

public sealed class PublishedChecksTests
{
    [Fact]
    public void Run_EveryCheck_Passes() => Assert.All(PublishedChecks.Run(), check => Assert.True(check.Passed, check.ToString()));

    [Fact]
    public void Run_EveryCheck_HasSourceAndNameOfItsOwn()
    {
        var checks = PublishedChecks.Run();

        Assert.All(checks, check => Assert.NotEmpty(check.Source));
        Assert.Equal(checks.Count, checks.Select(check => check.What).Distinct().Count());
    }

    [Theory]
    [InlineData("1.00", "1.005", "0.005", true)]
    [InlineData("1.00", "1.006", "0.005", false)]
    [InlineData("1.00", "0.994", "0.005", false)]
    [InlineData("1.00", "1.0000000000001", "0", false)]
    public void Passed_Difference_IsHeldAgainstTheTolerance(string expected, string computed, string tolerance, bool passed)
    {
        var check = new PublishedCheck("one", "own", FactStatus.CommonPractice, Number(expected), Number(computed), Number(tolerance));

        Assert.Equal(passed, check.Passed);
    }

    [Fact]
    public void Passed_NothingComputed_Fails() =>
        Assert.False(new PublishedCheck("one", "own", FactStatus.CommonPractice, 1m, null, 100m).Passed);

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
