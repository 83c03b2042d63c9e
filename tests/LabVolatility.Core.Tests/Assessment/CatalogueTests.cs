using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using Xunit;

namespace LabVolatility.Core.Tests.Assessment;

public sealed class CatalogueTests
{
    private static readonly LimitPick Federal = Pick("US-9.0", 9.8m);
    private static readonly LimitPick ClassD1 = Pick("EN228-D1", null);

    [Fact]
    public void Assess_RvpByEpa_AnswersTheFederalLimit()
    {
        var outcome = Catalogue.Assess(Federal, [new("RVP", 9.95m, "psi", "ASTM D5191")]);

        Assert.Equal((Outcome.Conforms, "summer"), (outcome.Outcome, outcome.Season));
        Assert.Equal(("10.0", 0.0m), (outcome.Limits[0].Outcome.Compared, outcome.Limits[0].Outcome.Margin));
        Assert.Equal([0], outcome.Limits[0].Used);
    }

    [Theory]
    [InlineData("DVPE", "ASTM D5191", null), InlineData("RVP", "ASTM D5191", "CARB"), InlineData("RVP", "EN 13016-1", null), InlineData("Ptot", "ASTM D5191", null)]
    public void Assess_UnlikeQuantity_LeavesItIncomplete(string quantity, string method, string? correlation)
    {
        var outcome = Catalogue.Assess(Federal, [new(quantity, 8.0m, "psi", method, correlation)]);

        Assert.Equal(Outcome.Incomplete, outcome.Outcome);
        Assert.NotEmpty(outcome.Limits[0].Outcome.Why);
        Assert.Empty(outcome.Limits[0].Used);
    }

    [Fact]
    public void Assess_AstmAgainstEn228_IsIncomplete()
    {
        Assert.Equal(Outcome.Incomplete, Catalogue.Assess(ClassD1, [new("DVPE", 75m, "kPa", "ASTM D5191")]).Outcome);
        Assert.Equal(Outcome.Incomplete, Catalogue.Assess(ClassD1, [new("DVPE", 75m, "kPa", "EN 13016-1", "EPA")]).Outcome);
        Assert.Equal(Outcome.Conforms, Catalogue.Assess(ClassD1, [new("DVPE", 75m, "kPa", "EN 13016-1", "EN 13016-1")]).Outcome);
    }

    [Fact]
    public void Assess_LimitNotRequired_CountsOnceAnswered()
    {
        var unanswered = Catalogue.Assess(ClassD1, [new("DVPE", 75m, "kPa", "EN 13016-1")]);
        var answered = Catalogue.Assess(ClassD1, [new("DVPE", 75m, "kPa", "EN 13016-1"), new("E70", 51m, "% v/v", "EN ISO 3405")]);

        Assert.Equal([Outcome.Conforms, Outcome.Incomplete, Outcome.Incomplete], unanswered.Limits.Select(l => l.Outcome.Outcome));
        Assert.Equal(Outcome.Conforms, unanswered.Outcome);
        Assert.Equal([Outcome.Conforms, Outcome.DoesNotConform, Outcome.Incomplete], answered.Limits.Select(l => l.Outcome.Outcome));
        Assert.Equal(Outcome.DoesNotConform, answered.Outcome);
    }

    [Fact]
    public void Assess_Required_MakesTheOutcome()
    {
        var required = ClassD1 with { Limits = [.. ClassD1.Limits.Select(l => l with { Limit = l.Limit with { Required = true } })] };

        Assert.Equal(Outcome.Incomplete, Catalogue.Assess(required, [new("DVPE", 75m, "kPa", "EN 13016-1")]).Outcome);
        Assert.Equal(Outcome.DoesNotConform, Catalogue.Assess(required, [new("DVPE", 95m, "kPa", "EN 13016-1")]).Outcome);
    }

    // 60.04 and 60.07 make 60.055, rounded once to 60.1; each rounded first would make 60.05 and then 60.0.
    [Fact]
    public void Assess_TwoResults_AreOneMeanUnrounded()
    {
        var outcome = Catalogue.Assess(Pick("EN228-A", null), [new("DVPE", 60.04m, "kPa", "EN 13016-1"), new("DVPE", 60.07m, "kPa", "EN 13016-1")]);

        Assert.Equal((Outcome.DoesNotConform, 60.055m, "60.1"), (outcome.Outcome, outcome.Limits[0].Outcome.Value, outcome.Limits[0].Outcome.Compared));
    }

    [Fact]
    public void Assess_RefereeMethod_GoesBeforeAnother()
    {
        var outcome = Catalogue.Assess(Pick("EN228-A", null), [new("DVPE", 59m, "kPa", "EN 13016-3"), new("DVPE", 61m, "kPa", "EN 13016-1")]);

        Assert.Equal((Outcome.DoesNotConform, 61m), (outcome.Outcome, outcome.Limits[0].Outcome.Value));
        Assert.Equal([1], outcome.Limits[0].Used);
    }

    // Common practice: no valid result is passed over. D4814 class A, at most 62 kPa, names no referee.
    [Theory]
    [InlineData("ASTM D4953", "ASTM D5482"), InlineData("ASTM D5482", "ASTM D4953"), InlineData("ASTM D5191", "ASTM D4953")]
    public void Assess_SeveralMethods_TheWorseGovernsAndTheOtherIsNamed(string low, string high)
    {
        var limit = Pick("D4814-A", null);
        var unrefereed = limit with { Limits = [.. limit.Limits.Select(l => l with { Limit = l.Limit with { RefereeMethod = null } })] };

        var outcome = Catalogue.Assess(unrefereed, [new("DVPE", 60m, "kPa", low), new("DVPE", 66m, "kPa", high)]);

        Assert.Equal((Outcome.DoesNotConform, 66m), (outcome.Outcome, outcome.Limits[0].Outcome.Value));
        Assert.Equal([1], outcome.Limits[0].Used);
        Assert.Contains($"{low} found 60 kPa", outcome.Limits[0].Outcome.Why, StringComparison.Ordinal);
    }

    // ISO 4259-2 (from memory): two results further apart than r make no mean.
    [Theory]
    [InlineData("58.0", "59.5", Outcome.Conforms), InlineData("58.0", "59.6", Outcome.Incomplete)]
    public void Assess_ResultsThatDisagree_MakeNoMean(string one, string other, Outcome expected)
    {
        MeasuredResult Result(string value) => new("DVPE", value.Number(), "kPa", "EN 13016-1", Repeatability: 1.5m);

        var outcome = Catalogue.Assess(Pick("EN228-A", null), [Result(one), Result(other)]);

        Assert.Equal(expected, outcome.Outcome);
    }

    [Fact]
    public void Assess_OtherUnit_IsConvertedOnce()
    {
        var outcome = Catalogue.Assess(Federal, [new("RVP", 62.052815638512m, "kPa", "ASTM D5191", null, 1, null, 6.894757293168m)], DecisionRule.Guarded);

        Assert.Equal(9.0m, decimal.Round(outcome.Limits[0].Outcome.Value!.Value, 9, MidpointRounding.ToEven));
        Assert.Equal(Outcome.Conforms, outcome.Outcome);
        Assert.Equal(9.4066m, decimal.Round(outcome.Limits[0].Outcome.AcceptanceMaximum!.Value, 4, MidpointRounding.ToEven));
    }

    [Fact]
    public void Assess_NoLimitInForce_SaysSo()
    {
        var pick = LimitPicker.Pick(PublishedAreas.All, new("gasoline", ProductState.Finished, "US-9.0", PointOfCompliance.Terminal, new DateOnly(2026, 1, 1), null));

        var outcome = Catalogue.Assess(pick, [new("RVP", 12m, "psi", "ASTM D5191")]);

        Assert.Equal(Outcome.NoLimit, outcome.Outcome);
        Assert.NotNull(outcome.NoLimit);
    }

    [Fact]
    public void Of_SeveralOutcomes_TheWorstWins()
    {
        Assert.Equal(Outcome.DoesNotConform, Overall(Outcome.Conforms, Outcome.Incomplete, Outcome.DoesNotConform, Outcome.NotDecided));
        Assert.Equal(Outcome.Incomplete, Overall(Outcome.NotDecided, Outcome.Incomplete, Outcome.Conforms));
        Assert.Equal(Outcome.NotDecided, Overall(Outcome.Conforms, Outcome.NotDecided));
        Assert.Equal(Outcome.NoLimit, Overall());
    }

    private static Outcome Overall(params Outcome[] outcomes) => OverallOutcome.Of(outcomes.Select(o => (o, true)));

    private static LimitPick Pick(string area, decimal? ethanol) => LimitPicker.Pick(
        PublishedAreas.All, new("gasoline", ProductState.Finished, area, PointOfCompliance.Terminal, new DateOnly(2026, 7, 1), ethanol));
}
