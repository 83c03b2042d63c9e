using CsCheck;
using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using Xunit;

namespace LabVolatility.Core.Tests.Assessment;

public sealed class AssignedTestValueTests
{
    private static readonly AssignedTestInput Nine = new(9.0m, 9.2m, 0.40m, null, 9.0m, 1, 0.95m, Comparison.Absolute, "psi");

    public static TheoryData<string, string, decimal, decimal, decimal, decimal> AcceptanceLimits
    {
        get
        {
            var rows = new TheoryData<string, string, decimal, decimal, decimal, decimal>();
            foreach (var row in Rows.Of("Assessment.d3244-acceptance"))
                rows.Add(row[0], row[1], row[2].Number(), row[3].Number(), row[4].Number(), row[5].Number());
            return rows;
        }
    }

    [Theory, MemberData(nameof(AcceptanceLimits))]
    public void Judge_AgreedProbability_HasTheAcceptanceLimitOfD3244(
        string id, string kind, decimal limit, decimal bigR, decimal probability, decimal expected)
    {
        Assert.NotEmpty(id);
        var isMax = kind == "max";

        var verdict = AssignedTestValue.Judge(new(
            limit, limit, bigR, isMax ? null : limit, isMax ? limit : null, 1, probability, Comparison.Absolute));

        // The factor is printed with three digits, 0.255: half of its last digit times R·D besides half of the expected value's.
        Assert.Equal((double)expected, (double)(isMax ? verdict.AcceptanceMaximum : verdict.AcceptanceMinimum)!.Value, 0.0005 + (0.0005 * (double)bigR * 1.645));
    }

    // Max 9.0 psi, R 0.40, P 0.95: AL = 9.168 (row D3244-9.0-0.95); the ATV of 9.0 and 9.2 is 9.1.
    [Fact]
    public void Judge_WithinR_AssignsTheMean()
    {
        var verdict = AssignedTestValue.Judge(Nine);

        Assert.Equal((9.1m, true), (verdict.Value, verdict.Accepted));
        Assert.Equal(2, verdict.Arithmetic.Count);
    }

    [Fact]
    public void Judge_CriticalProperty_RefusesTheSameValue()
    {
        Assert.False(AssignedTestValue.Judge(Nine with { Probability = 0.05m }).Accepted);
    }

    // A difference of exactly R still makes a mean; a thousandth more doesn't.
    [Theory, InlineData("9.40", true), InlineData("9.401", false)]
    public void Judge_DifferenceAtR_IsStillAssigned(string second, bool assigned)
    {
        var verdict = AssignedTestValue.Judge(Nine with { Second = second.Number() });

        Assert.Equal(assigned, verdict.Value is not null);
        Assert.Equal(assigned, verdict.Accepted is not null);
    }

    // AL 9.168 becomes 9.2, ATV 9.19 becomes 9.2: met by rounding, not met as it is.
    [Theory, InlineData(Comparison.Rounding, true), InlineData(Comparison.Absolute, false)]
    public void Judge_AgreedComparison_Decides(Comparison comparison, bool accepted)
    {
        Assert.Equal(accepted, AssignedTestValue.Judge(Nine with { First = 9.19m, Second = 9.19m, Comparison = comparison }).Accepted);
    }

    [Fact]
    public void Judge_ReproducibilityNotSet_AssignsNothing()
    {
        var verdict = AssignedTestValue.Judge(Nine with { Reproducibility = null });

        Assert.Equal((null, null), (verdict.Value, verdict.Accepted));
        Assert.Contains("R is not set", verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_InputOutOfRange_Throws()
    {
        Assert.Throws<ArgumentException>(() => AssignedTestValue.Judge(Nine with { Maximum = null }));
        Assert.Throws<ArgumentOutOfRangeException>(() => AssignedTestValue.Judge(Nine with { Probability = 1m }));
        Assert.Throws<ArgumentOutOfRangeException>(() => AssignedTestValue.Judge(Nine with { Reproducibility = 0m }));
    }

    // At P = 0.5 the acceptance limit is the limit itself, whatever R is.
    [Fact]
    public void Judge_EvenChance_TheLimitItselfDecides() =>
        Gen.Int[1, 500].Sample(n =>
            AssignedTestValue.Judge(Nine with { Reproducibility = n / 100m, Second = 9.0m, Probability = 0.5m }).AcceptanceMaximum == 9.0m);
}
