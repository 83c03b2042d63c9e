using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using Xunit;

namespace LabVolatility.Core.Tests.Limits;

public sealed class PublishedAreasTests
{
    private static readonly string[] Codes =
    [
        "US-9.0", "US-7.8", "US-RFG", "EN228-A", "EN228-B", "EN228-C", "EN228-C1", "EN228-D", "EN228-D1", "EN228-E",
        "EN228-E1", "EN228-F", "EN228-F1", "EN228-A-W", "D4814-AA", "D4814-A", "D4814-B", "D4814-C", "D4814-D", "D4814-E",
    ];

    public static TheoryData<string, string, string, decimal?, decimal?, string> European
    {
        get
        {
            var rows = new TheoryData<string, string, string, decimal?, decimal?, string>();
            foreach (var row in Rows.Of("Limits.en-228-classes"))
                rows.Add(row[0], row[1], row[2], row[3].NumberOrNone(), row[4].NumberOrNone(), row[5]);
            return rows;
        }
    }

    public static TheoryData<string, decimal> American
    {
        get
        {
            var rows = new TheoryData<string, decimal>();
            foreach (var row in Rows.Of("Limits.d4814-classes"))
                rows.Add(row[0], row[1].Number());
            return rows;
        }
    }

    [Fact]
    public void All_Codes_AreThoseOfTheInterface() =>
        Assert.Equal(Codes.Order(StringComparer.Ordinal), PublishedAreas.All.Select(a => a.Code).Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(European))]
    public void En228_EachLimit_IsAsPublished(string code, string quantity, string oxygen, decimal? minimum, decimal? maximum, string status)
    {
        var limit = Limit(code, quantity, oxygen == "3.7" ? 9.8m : null);

        Assert.Equal((minimum, maximum, status), (limit.Minimum, limit.Maximum, limit.Status.Text()));
        Assert.Equal(quantity == "DVPE", limit.Required);
        Assert.Equal(quantity == "VLI" ? 0 : 1, limit.Digits);
    }

    [Fact]
    public void En228_NumberOfLimits_IsThatOfTheTable()
    {
        var published = PublishedAreas.All.Where(a => a.Code.StartsWith("EN228", StringComparison.Ordinal) && a.Code != "EN228-A-W");

        Assert.Equal(Rows.Of("Limits.en-228-classes").Count, published.Sum(a => a.Limits.Count));
    }

    [Theory, MemberData(nameof(American))]
    public void D4814_EachClass_IsAsPublished(string code, decimal maximum)
    {
        var limit = Limit(code, "DVPE");

        Assert.Equal((maximum, (decimal?)null, "kPa", 0), (limit.Maximum, limit.Minimum, limit.Unit, limit.Digits));
        Assert.Equal(["ASTM D5191", "ASTM D4953", "ASTM D5482", "ASTM D6378"], limit.Methods);
    }

    // 40 CFR 1090.215(a)(1) to (3) and (b).
    [Theory]
    [InlineData("US-9.0", "9.0", true, FactStatus.Published), InlineData("US-7.8", "7.8", true, FactStatus.Published), InlineData("US-RFG", "7.4", false, FactStatus.FromMemory)]
    public void UnitedStates_EachLevel_IsAsPublished(string code, string maximum, bool hasAllowance, FactStatus status)
    {
        var limit = Limit(code, "RVP");

        Assert.Equal((maximum.Number(), "psi", 1, "EPA", Standing.Legal, status), (limit.Maximum, limit.Unit, limit.Digits, limit.Correlation, limit.Standing, limit.Status));
        if (hasAllowance)
            Assert.Equal(new FixedAllowance(1.0m, 9m, 10m, "40 CFR 1090.215(b)"), limit.Allowance);
        else
            Assert.IsType<NoAllowance>(limit.Allowance);
    }

    [Fact]
    public void En228_WithAllowance_NeedsItsDerogation()
    {
        var area = PublishedAreas.All.Single(a => a.Code == "EN228-A-W");
        var limit = Limit("EN228-A-W", "DVPE");

        Assert.True(area.Derogation);
        Assert.True(Assert.IsType<TableAllowance>(limit.Allowance).RequiresDerogation);
        Assert.Equal((45.0m, 60.0m), (limit.Minimum, limit.Maximum));
        Assert.Equal("EN 13016-1", limit.RefereeMethod);
        Assert.Equal(["EN 13016-1", "EN 13016-3"], limit.Methods);
        Assert.All(PublishedAreas.All.Where(a => a.Code != "EN228-A-W"), other => Assert.False(other.Derogation));
    }

    [Fact]
    public void Keys_OfAllLimits_AreUnique()
    {
        var keys = PublishedAreas.All.SelectMany(a => a.Limits).Select(l => l.Limit.Key).ToList();

        Assert.Equal(keys.Count, keys.Distinct().Count());
        Assert.All(PublishedAreas.All.SelectMany(a => a.Limits), l => Assert.NotEmpty(l.Limit.Source));
    }

    private static Limit Limit(string code, string quantity, decimal? ethanol = null) => PublishedAreas.All.Single(a => a.Code == code)
        .Limits.Single(l => l.Limit.Quantity == quantity && l.Ethanol?.Contains(ethanol) != false).Limit;
}
