using CsCheck;
using LabVolatility.Core.Assessment;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Assessment;

public sealed class TwoLaboratoriesTests
{
    private static readonly Gen<decimal> Value = Gen.Int[40_000, 80_000].Select(n => n / 1000m);
    private static readonly Gen<int> Count = Gen.Int[1, 12];

    public static TheoryData<string, decimal, decimal, int, int, decimal> Differences
    {
        get
        {
            var rows = new TheoryData<string, decimal, decimal, int, int, decimal>();
            foreach (var row in Rows.Of("Assessment.iso4259-two-laboratories"))
                rows.Add(row[0], row[1].Number(), row[2].Number(), (int)row[3].Number(), (int)row[4].Number(), row[5].Number());
            return rows;
        }
    }

    [Theory, MemberData(nameof(Differences))]
    public void LargestDifference_OfTwoMeans_IsIso4259(string id, decimal bigR, decimal r, int count1, int count2, decimal expected)
    {
        Assert.NotEmpty(id);
        Assert.Equal(expected, Rounding.ToPlaces(TwoLaboratories.LargestDifference(bigR, r, count1, count2)!.Value, 4));
    }

    // One result each: R itself, so a difference of exactly R is accepted.
    [Theory, InlineData("63.0", true), InlineData("63.001", false)]
    public void Judge_OneResultEach_HoldsTheDifferenceAgainstR(string second, bool agree)
    {
        var verdict = TwoLaboratories.Judge(new(60.0m, 1), new(second.Number(), 1), 3.0m, null, "kPa");

        Assert.Equal((agree, 3.0m), (verdict.Agree, verdict.Allowed));
        Assert.Equal(2, verdict.Arithmetic.Count);
    }

    // R = 3.0, r = 1.5, two results each: 2.806 kPa (the row 4259-2LAB-2-2).
    [Theory, InlineData("62.80", true), InlineData("62.81", false)]
    public void Judge_TwoResultsEach_AllowsLessThanR(string second, bool agree)
    {
        Assert.Equal(agree, TwoLaboratories.Judge(new(60.0m, 2), new(second.Number(), 2), 3.0m, 1.5m).Agree);
    }

    [Fact]
    public void Judge_PrecisionNotSet_SaysWhatIsMissing()
    {
        var withoutR = TwoLaboratories.Judge(new(60m, 1), new(61m, 1), null, null, "kPa");
        var withoutSmallR = TwoLaboratories.Judge(new(60m, 2), new(61m, 1), 3m, null, "kPa");

        Assert.Equal((null, 1m, null), (withoutR.Agree, withoutR.Difference, withoutR.Allowed));
        Assert.Contains("R is not set", withoutR.Why, StringComparison.Ordinal);
        Assert.Null(withoutSmallR.Agree);
        Assert.Contains("r is not set", withoutSmallR.Why, StringComparison.Ordinal);
        Assert.Null(TwoLaboratories.LargestDifference(3m, null, 2, 1));
        Assert.Null(TwoLaboratories.LargestDifference(3m, 4m, 2, 1));
    }

    [Fact]
    public void Judge_CountOrPrecisionOutOfRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoLaboratories.Judge(new(60m, 0), new(61m, 1), 3m, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoLaboratories.Judge(new(60m, 1), new(61m, 1), 0m, null));
    }

    [Fact]
    public void Judge_LaboratoriesChangePlaces_SameVerdict() =>
        Gen.Select(Value, Value, Count, Count).Sample(x =>
        {
            var one = TwoLaboratories.Judge(new(x.Item1, x.Item3), new(x.Item2, x.Item4), 3m, 1.5m);
            var other = TwoLaboratories.Judge(new(x.Item2, x.Item4), new(x.Item1, x.Item3), 3m, 1.5m);
            return (one.Agree, one.Difference, one.Allowed) == (other.Agree, other.Difference, other.Allowed);
        });

    // More results narrow what is allowed, never below √(R² − r²).
    [Fact]
    public void LargestDifference_MoreResults_NeverAllowsMore() =>
        Gen.Select(Count, Count).Sample((k1, k2) =>
        {
            var fewer = TwoLaboratories.LargestDifference(3m, 1.5m, k1, k2)!.Value;
            var more = TwoLaboratories.LargestDifference(3m, 1.5m, k1 + 1, k2)!.Value;
            return more <= fewer && fewer <= 3m && more * more >= 9m - 2.25m;
        });
}
