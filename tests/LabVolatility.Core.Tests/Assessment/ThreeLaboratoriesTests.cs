using CsCheck;
using LabVolatility.Core.Assessment;
using Xunit;

namespace LabVolatility.Core.Tests.Assessment;

// R = 3.0 for one result each: two laboratories may differ by 3.0 (row 4259-2LAB-1-1).
public sealed class ThreeLaboratoriesTests
{
    private static readonly Gen<decimal> Value = Gen.Int[40_000, 80_000].Select(n => n / 1000m);

    [Fact]
    public void Judge_AllAgree_AllMakeTheMean()
    {
        var verdict = Judge(60.0m, 61.0m, 62.0m);

        Assert.Equal([0, 1, 2], verdict.Used);
        Assert.Equal((null, 61.0m), (verdict.Dropped, verdict.Mean));
    }

    [Fact]
    public void Judge_OneFarAway_IsDropped()
    {
        var verdict = Judge(60.0m, 64.0m, 61.0m);

        Assert.Equal([0, 2], verdict.Used);
        Assert.Equal((1, 60.5m), (verdict.Dropped, verdict.Mean));
        Assert.Contains("theirs is farthest", verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_NoTwoNearEnough_NothingStands()
    {
        var verdict = Judge(50.0m, 60.0m, 55.0m);

        Assert.Empty(verdict.Used);
        Assert.Equal((null, null), (verdict.Dropped, verdict.Mean));
        Assert.Contains("find the cause", verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_ReproducibilityNotSet_CannotBeJudged()
    {
        var verdict = ThreeLaboratories.Judge([("ours", new(60m, 1)), ("theirs", new(61m, 1)), ("third", new(62m, 1))], null, null);

        Assert.Empty(verdict.Used);
        Assert.Null(verdict.Mean);
        Assert.Contains("R is not set", verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_TwoLaboratories_Throws() =>
        Assert.Throws<ArgumentException>(() => ThreeLaboratories.Judge([("ours", new(60m, 1)), ("theirs", new(61m, 1))], 3m, null));

    // Whatever stands lies between the lowest and the highest, and what stands agrees two by two.
    [Fact]
    public void Judge_AnyThree_WhatStandsAgrees() =>
        Gen.Select(Value, Value, Value).Sample((a, b, c) =>
        {
            decimal[] all = [a, b, c];
            var verdict = Judge(a, b, c);
            return verdict.Mean is null
                ? verdict.Used.Count == 0
                : verdict.Mean >= all.Min() && verdict.Mean <= all.Max()
                    && verdict.Used.Max(i => all[i]) - verdict.Used.Min(i => all[i]) <= 3m;
        });

    private static ThreeLaboratoryVerdict Judge(decimal ours, decimal theirs, decimal third) =>
        ThreeLaboratories.Judge([("ours", new(ours, 1)), ("theirs", new(theirs, 1)), ("third", new(third, 1))], 3.0m, null, "kPa");
}
