using CsCheck;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Precision;

public sealed class DuplicatesTests
{
    private static readonly decimal[] Nine = [60.0m, 60.1m, 60.2m, 60.0m, 60.1m, 60.2m, 60.0m, 60.1m, 60.2m];

    public static TheoryData<string, decimal, int, decimal> MostDivergent
    {
        get
        {
            var rows = new TheoryData<string, decimal, int, decimal>();
            foreach (var row in Rows.Of("Precision.iso4259-most-divergent"))
                rows.Add(row[0], row[1].Number(), (int)row[2].Number(), row[3].Number());
            return rows;
        }
    }

    [Theory, MemberData(nameof(MostDivergent))]
    public void LargestDivergence_OfNResults_IsIso4259(string id, decimal r, int count, decimal expected)
    {
        Assert.NotEmpty(id);
        Assert.Equal(expected, Rounding.ToPlaces(Duplicates.LargestDivergence(r, count), 4));
    }

    [Fact]
    public void Judge_OneResult_IsReported()
    {
        var verdict = Duplicates.Judge([63.77m], 1.5m);

        Assert.Equal((true, 63.77m, NextStep.Report), (verdict.Acceptable, verdict.Mean, verdict.Next));
        Assert.Null(Duplicates.Judge([63.77m], null).Acceptable);
    }

    // A difference of exactly r is accepted (ISO 4259-2: differ by at most r).
    [Fact]
    public void Judge_TwoExactlyRApart_AreAccepted()
    {
        var verdict = Duplicates.Judge([60.0m, 61.5m], 1.5m);

        Assert.Equal((true, 60.75m, NextStep.Report), (verdict.Acceptable, verdict.Mean, verdict.Next));
        Assert.Equal([0, 1], verdict.Used);
    }

    [Fact]
    public void Judge_TwoBeyondR_AsksForEightMore()
    {
        var verdict = Duplicates.Judge([60.0m, 61.51m], 1.5m);

        Assert.Equal((false, NextStep.More, 8), (verdict.Acceptable, verdict.Next, verdict.Needed));
        Assert.Equal([0, 1], verdict.Used);
    }

    // Three results, r = 1.5: the third may be 1.2990 from the mean of the others.
    [Theory, InlineData("61.299", true), InlineData("61.300", false)]
    public void Judge_ThreeResults_HoldsTheMostDivergent(string third, bool agrees)
    {
        var verdict = Duplicates.Judge([60.0m, 60.0m, third.Number()], 1.5m);

        Assert.Equal(agrees, verdict.Acceptable);
        Assert.Equal(agrees ? null : 7, verdict.Needed);
    }

    [Fact]
    public void Judge_TenWithOneApart_SetsItAside()
    {
        var verdict = Duplicates.Judge([.. Nine[..4], 64.0m, .. Nine[4..]], 1.5m);

        Assert.Equal((true, NextStep.Report), (verdict.Acceptable, verdict.Next));
        Assert.Equal([0, 1, 2, 3, 5, 6, 7, 8, 9], verdict.Used);
        Assert.Equal(60.1m, verdict.Mean);
    }

    [Fact]
    public void Judge_TenWithTwoApart_AsksForAnInvestigation()
    {
        var verdict = Duplicates.Judge([.. Nine[..8], 64.0m, 56.0m], 1.5m);

        Assert.Equal((false, NextStep.Investigate), (verdict.Acceptable, verdict.Next));
        Assert.Equal(10, verdict.Used.Count);
    }

    [Fact]
    public void Judge_RepeatabilityNotSet_SaysSo()
    {
        var verdict = Duplicates.Judge([60.0m, 70.0m], null);

        Assert.Null(verdict.Acceptable);
        Assert.Equal((65.0m, NextStep.Report), (verdict.Mean, verdict.Next));
        Assert.Contains("not set", verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_NothingOrZeroR_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => Duplicates.Judge([], 1.5m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Duplicates.Judge([60m], 0m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Duplicates.Judge([60m], 1m, 2));
    }

    [Fact]
    public void Judge_SameShiftOnAll_GivesTheSameVerdict() =>
        Gen.Select(Gen.Decimal[50m, 70m].Array[2, 12], Gen.Int[-20, 20]).Sample((values, shift) =>
        {
            decimal[] rounded = [.. values.Select(v => Rounding.ToPlaces(v, 2))];
            var here = Duplicates.Judge(rounded, 1.5m);
            var there = Duplicates.Judge([.. rounded.Select(v => v + shift)], 1.5m);
            return (here.Acceptable, here.Next) == (there.Acceptable, there.Next) && here.Used.SequenceEqual(there.Used);
        });
}
