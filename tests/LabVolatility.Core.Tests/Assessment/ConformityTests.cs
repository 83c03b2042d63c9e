using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Assessment;

public sealed class ConformityTests
{
    public static TheoryData<string, string, decimal, int, decimal, string, bool> Rounded
    {
        get
        {
            var rows = new TheoryData<string, string, decimal, int, decimal, string, bool>();
            foreach (var row in Rows.Of("Assessment.e29-rounding"))
                rows.Add(row[0], row[1], row[2].Number(), (int)row[3].Number(), row[4].Number(), row[5], row[6] == "yes");
            return rows;
        }
    }

    // Own examples: each value of the table above beyond its limit fails the absolute method, however little.
    public static TheoryData<decimal, decimal, bool> Absolute => new()
    {
        { 9.04m, 9.0m, false }, { 9.05m, 9.0m, false }, { 7.75m, 7.8m, true }, { 7.45m, 7.4m, false }, { 60.05m, 60.0m, false }, { 9.0m, 9.0m, true },
    };

    [Theory, MemberData(nameof(Rounded))]
    public void Judge_RoundingMethod_IsE29(string id, string kind, decimal limit, int digits, decimal value, string rounded, bool meets)
    {
        Assert.NotEmpty(id);
        var outcome = Conformity.Judge(Against(kind, limit, digits) with { Value = value });

        Assert.Equal(meets ? Outcome.Conforms : Outcome.DoesNotConform, outcome.Outcome);
        Assert.Equal(rounded, outcome.Compared);
        Assert.Equal(0, outcome.ResultsToDecide);
    }

    [Theory, MemberData(nameof(Absolute))]
    public void Judge_AbsoluteMethod_TakesTheValueAsItIs(decimal value, decimal limit, bool meets)
    {
        var outcome = Conformity.Judge(Against("max", limit, 1) with { Value = value, Comparison = Comparison.Absolute });

        Assert.Equal(meets ? Outcome.Conforms : Outcome.DoesNotConform, outcome.Outcome);
        Assert.Equal(limit - value, outcome.Margin);
    }

    // 9.83 psi gives 9.05048 psi by EPA's equation: once rounded 9.1, twice rounded 9.0 (40 CFR 1090.50(b)).
    [Fact]
    public void Judge_DoubleRoundingTrap_FailsNinePsi()
    {
        var value = (0.956m * 9.83m) - 0.347m;

        var outcome = Conformity.Judge(Against("max", 9.0m, 1) with { Value = value });

        Assert.Equal((Outcome.DoesNotConform, "9.1", -0.1m), (outcome.Outcome, outcome.Compared, outcome.Margin));
    }

    [Fact]
    public void Judge_TwoSided_MarginIsToTheNearestEdge()
    {
        var input = new LimitInput { Digits = 1, Minimum = 45.0m, Maximum = 60.0m, Unit = "kPa" };

        Assert.Equal(0.8m, Conformity.Judge(input with { Value = 59.24m }).Margin);
        Assert.Equal(1.0m, Conformity.Judge(input with { Value = 46.04m }).Margin);
        Assert.Equal(-0.5m, Conformity.Judge(input with { Value = 44.5m }).Margin);
        Assert.Equal((45.0m, 60.0m), (Conformity.Judge(input with { Value = 50m }).AcceptanceMinimum, Conformity.Judge(input with { Value = 50m }).AcceptanceMaximum));
    }

    [Fact]
    public void Judge_NoValue_IsIncomplete()
    {
        var outcome = Conformity.Judge(Against("max", 60.0m, 1));

        Assert.Equal(Outcome.Incomplete, outcome.Outcome);
        Assert.Null(outcome.Compared);
        Assert.Null(outcome.Margin);
    }

    [Fact]
    public void Judge_ReproducibilityNotSet_HasNoProbability() =>
        Assert.Null(Conformity.Judge(Against("max", 60.0m, 1) with { Value = 59m }).ProbabilityBeyond);

    // u = 3.0/(1.96·√2) = 1.0823; (60 − 59)/u = 0.9240; upper tail 0.1778 (standard normal table).
    [Fact]
    public void Judge_WithReproducibility_GivesTheProbability()
    {
        var outcome = Conformity.Judge(Against("max", 60.0m, 1) with { Value = 59m, Reproducibility = 3.0m });

        Assert.Equal(0.1778m, Rounding.ToPlaces(outcome.ProbabilityBeyond!.Value, 4));
    }

    [Fact]
    public void Judge_ImpossibleInput_IsRefused()
    {
        var input = Against("max", 60.0m, 1) with { Value = 59m };

        Assert.Throws<ArgumentException>(() => Conformity.Judge(input with { Maximum = null }));
        Assert.Throws<ArgumentException>(() => Conformity.Judge(input with { Minimum = 61m }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Conformity.Judge(input with { Count = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Conformity.Judge(input with { Confidence = 1m }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Conformity.Judge(input with { Confidence = 0.4m }));
        Assert.Throws<ArgumentOutOfRangeException>(() => Conformity.Judge(input with { Reproducibility = 0m }));
    }

    private static LimitInput Against(string kind, decimal limit, int digits) => new()
    {
        Digits = digits,
        Unit = "psi",
        Minimum = kind == "min" ? limit : null,
        Maximum = kind == "max" ? limit : null,
    };
}
