using CsCheck;
using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Assessment;

public sealed class GuardedRuleTests
{
    // The tables use the printed 0.59; the interface asks for z/(1.96·√2) unrounded, 0.593412 at 95 %.
    private const decimal Printed = 0.59m;
    private const decimal Constant = 0.593412m;

    // ASTM D3244 prints 1/(1.96 · 2) as 0.255.
    private const decimal PrintedForTwo = 0.255m;

    // Illustrative precision, as in the worked examples: the real one is the laboratory's to enter.
    private static readonly LimitInput Sixty = new()
    {
        Digits = 1,
        Unit = "kPa",
        Maximum = 60.0m,
        Rule = DecisionRule.Guarded,
        Repeatability = 1.5m,
        Reproducibility = 3.0m,
    };

    public static TheoryData<string, string, decimal, decimal, decimal, int, decimal, decimal, decimal> OneLaboratory
    {
        get
        {
            var rows = new TheoryData<string, string, decimal, decimal, decimal, int, decimal, decimal, decimal>();
            foreach (var row in Rows.Of("Assessment.iso4259-one-laboratory"))
                rows.Add(row[0], row[1], row[2].Number(), row[3].Number(), row[4].Number(), (int)row[5].Number(), row[6].Number(), row[7].Number(), row[8].Number());
            return rows;
        }
    }

    public static TheoryData<string, decimal, decimal, decimal> Recipient
    {
        get
        {
            var rows = new TheoryData<string, decimal, decimal, decimal>();
            foreach (var row in Rows.Of("Assessment.iso4259-recipient"))
                rows.Add(row[0], row[1].Number(), row[2].Number(), row[3].Number());
            return rows;
        }
    }

    public static TheoryData<string, string, decimal, decimal, decimal, decimal> TwoLaboratories
    {
        get
        {
            var rows = new TheoryData<string, string, decimal, decimal, decimal, decimal>();
            foreach (var row in Rows.Of("Assessment.d3244-acceptance"))
                rows.Add(row[0], row[1], row[2].Number(), row[3].Number(), row[4].Number(), row[5].Number());
            return rows;
        }
    }

    [Theory, MemberData(nameof(OneLaboratory))]
    public void Judge_MeanOfK_HasTheEdgesOfIso4259(
        string id, string kind, decimal limit, decimal bigR, decimal r, int count, decimal inner, decimal outer, decimal ofMean)
    {
        Assert.NotEmpty(id);
        var isMax = kind == "max";
        var input = Sixty with { Maximum = isMax ? limit : null, Minimum = isMax ? null : limit, Reproducibility = bigR, Repeatability = r, Count = count, Value = 50m };

        var outcome = Conformity.Judge(input);

        var tolerance = (Constant - Printed) * ofMean + 0.005m;
        Assert.Equal((double)inner, (double)(isMax ? outcome.AcceptanceMaximum : outcome.AcceptanceMinimum)!.Value, (double)tolerance);
        Assert.Equal((double)outer, (double)(isMax ? outcome.RejectionMaximum : outcome.RejectionMinimum)!.Value, (double)tolerance);
        Assert.Equal(ofMean, Rounding.ToPlaces(Uncertainty.OfMean(bigR, r, count)!.Value, 4));
    }

    [Fact]
    public void Guard_AtNinetyFivePercent_IsTheUnroundedConstant() =>
        Assert.Equal(Constant, Rounding.ToPlaces(Uncertainty.Guard(1m, 0.95m), 6));

    [Theory, MemberData(nameof(Recipient))]
    public void Guard_OfSulfur_IsThePublishedLimit(string id, decimal limit, decimal outer, decimal guard)
    {
        Assert.NotEmpty(id);
        var distance = Uncertainty.Guard(0.0812m * (limit + 0.15m), 0.95m);

        Assert.Equal(guard, Rounding.ToPlaces(distance * Printed / Constant, 4));
        Assert.Equal(outer, Rounding.ToPlaces(limit + guard, 2));
    }

    [Theory, MemberData(nameof(TwoLaboratories))]
    public void Guard_OfTwoLaboratories_IsD3244(string id, string kind, decimal limit, decimal bigR, decimal probability, decimal expected)
    {
        Assert.NotEmpty(id);
        var distance = Uncertainty.Guard(bigR, probability, laboratories: 2) * PrintedForTwo * 1.96m * 2m;

        Assert.Equal(expected, Rounding.ToPlaces(kind == "max" ? limit + distance : limit - distance, 3));
    }

    // Inner edge 58.2197, outer 61.7803 (60 ∓ 1.644854 · 3.0 / 2.771859): on the inner edge still conforms.
    [Theory]
    [InlineData("58.21", Outcome.Conforms), InlineData("58.23", Outcome.NotDecided), InlineData("60.0", Outcome.NotDecided), InlineData("61.77", Outcome.NotDecided), InlineData("61.79", Outcome.DoesNotConform)]
    public void Judge_BetweenTheEdges_IsNotDecided(string value, Outcome expected) =>
        Assert.Equal(expected, Conformity.Judge(Sixty with { Value = value.Number() }).Outcome);

    [Fact]
    public void Judge_OnTheEdges_IsInsideThem()
    {
        var edges = Conformity.Judge(Sixty with { Value = 50m });

        Assert.Equal(Outcome.Conforms, Conformity.Judge(Sixty with { Value = edges.AcceptanceMaximum }).Outcome);
        Assert.Equal(Outcome.NotDecided, Conformity.Judge(Sixty with { Value = edges.RejectionMaximum }).Outcome);
    }

    [Fact]
    public void Judge_WithoutPrecision_SaysWhy()
    {
        Assert.Contains("R is not set", Undecided(Sixty with { Value = 50m, Reproducibility = null }), StringComparison.Ordinal);
        Assert.Contains("r is not set", Undecided(Sixty with { Value = 50m, Repeatability = null, Count = 2 }), StringComparison.Ordinal);
        Assert.Contains("hazy", Undecided(Sixty with { Value = 50m, Hazy = true }), StringComparison.Ordinal);
        Assert.Contains("larger than", Undecided(Sixty with { Value = 50m, Repeatability = 4m, Count = 2 }), StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_SingleWithoutRepeatability_IsDecided() =>
        Assert.Equal(Outcome.Conforms, Conformity.Judge(Sixty with { Value = 50m, Repeatability = null }).Outcome);

    // By hand: 58.30 needs R1 ≤ 1.70 · 2.771859 / 1.644854 = 2.86478; k = 2 gives 2.8062: one more result.
    [Fact]
    public void ResultsToDecide_OneMore_IsFound() =>
        Assert.Equal(1, Conformity.Judge(Sixty with { Value = 58.30m }).ResultsToDecide);

    // Mean of very many: R1 → √(9 − 2.25) = 2.5981, guard 1.5418; 58.50 is 1.5 from the limit, so none can.
    [Fact]
    public void ResultsToDecide_TooNear_IsNone()
    {
        Assert.Null(Conformity.Judge(Sixty with { Value = 58.50m }).ResultsToDecide);
        Assert.Null(Conformity.Judge(Sixty with { Value = 60.0m }).ResultsToDecide);
        Assert.Null(Conformity.Judge(Sixty with { Value = 58.30m, Repeatability = null }).ResultsToDecide);
        Assert.Equal(0, Conformity.Judge(Sixty with { Value = 50m }).ResultsToDecide);
    }

    [Fact]
    public void ResultsToDecide_AnyValue_IsTheFirstThatDecides() =>
        Gen.Select(Gen.Decimal[57m, 63m], Gen.Decimal[0.1m, 3m], Gen.Int[1, 4]).Sample((value, r, count) =>
        {
            var input = Sixty with { Value = value, Repeatability = r, Count = count };
            return Conformity.Judge(input).ResultsToDecide switch
            {
                null => !IsDecided(input with { Count = 100_000 }),
                0 => IsDecided(input),
                { } more => IsDecided(input with { Count = count + more }) && !IsDecided(input with { Count = count + more - 1 }),
            };
        });

    // What is sure at 95 % conforms under the simple rule too, unrounded and, in tenths, rounded.
    [Fact]
    public void Judge_GuardedConforms_ImpliesSimpleConforms() =>
        Gen.Select(Gen.Decimal[40m, 80m], Gen.Decimal[0.2m, 4m]).Sample((value, bigR) =>
        {
            var input = Sixty with { Value = value, Minimum = 45.0m, Reproducibility = bigR };
            var guarded = Conformity.Judge(input).Outcome;
            var simple = Conformity.Judge(input with { Rule = DecisionRule.Simple, Comparison = Comparison.Absolute }).Outcome;
            var rounded = Conformity.Judge(input with { Rule = DecisionRule.Simple }).Outcome;
            return guarded == Outcome.NotDecided || (guarded == simple && guarded == rounded);
        });

    [Fact]
    public void Judge_Arithmetic_ShowsGuardAndMean()
    {
        var steps = Conformity.Judge(Sixty with { Value = 58m, Count = 2 }).Arithmetic;

        Assert.Equal(["R of the mean", "Guard", "Comparison"], steps.Select(s => s.Label));
        Assert.Equal("√(3² − 1.5² · (1 − 1/2))", steps[0].Expression);
        Assert.Equal(2.8062m, Rounding.ToPlaces(steps[0].Value!.Value, 4));
    }

    private static bool IsDecided(LimitInput input) => Conformity.Judge(input).Outcome != Outcome.NotDecided;

    private static string Undecided(LimitInput input)
    {
        var outcome = Conformity.Judge(input);
        Assert.Equal(Outcome.NotDecided, outcome.Outcome);
        Assert.Null(outcome.ResultsToDecide);
        Assert.Null(outcome.AcceptanceMaximum);
        return outcome.Why;
    }
}
