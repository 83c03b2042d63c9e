using LabVolatility.Laboratory.Certificates.Documents;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

public sealed class ConformityStatementTests
{
    [Theory]
    [InlineData(LimitOutcome.Conforms, "conforms to the maximum of 68.0 kPa")]
    [InlineData(LimitOutcome.DoesNotConform, "does not conform to the maximum of 68.0 kPa")]
    [InlineData(LimitOutcome.NotDecided, "is not decided")]
    public void For_Outcome_NamesResultLimitAndRule(LimitOutcome outcome, string words)
    {
        var limit = CertificateContents.Plain().Limits[0] with { Outcome = outcome };

        var sentence = Assert.Single(ConformityStatement.For([limit]));

        Assert.All(
            ["DVPE of sample S2600417B by ASTM D5191-22 (correlation ASTM D5191)", words, limit.Source, "legal limit", limit.Rule],
            part => Assert.Contains(part, sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void For_Incomplete_ClaimsNoResult()
    {
        var limit = CertificateContents.Plain().Limits[0] with { Outcome = LimitOutcome.Incomplete, Method = null, Compared = null };

        var sentence = Assert.Single(ConformityStatement.For([limit]));

        Assert.StartsWith("DVPE: no result that may answer the maximum of 68.0 kPa", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("conforms", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void For_SameLimitSeveralSamples_OneSentenceAndTheCount()
    {
        var statement = ConformityStatement.For(
        [
            .. CertificateContents.Long().Limits.Take(3),
            CertificateContents.Plain().Limits[0] with { Outcome = LimitOutcome.DoesNotConform },
        ]);

        Assert.Equal(3, statement.Count);
        Assert.Equal("Comparisons with limits: 4 (conforms: 3, does not conform: 1).", statement[0]);
        Assert.Contains("of samples S2600001X, S2600002X, S2600003X by", statement[1], StringComparison.Ordinal);
        Assert.Contains("of sample S2600417B by", statement[2], StringComparison.Ordinal);
    }

    [Fact]
    public void For_Minimum_SaysMinimum()
    {
        var limit = CertificateContents.Plain().Limits[0] with { Edge = LimitEdge.Minimum, Effective = "45.0" };

        Assert.Contains("the minimum of 45.0 kPa", ConformityStatement.For([limit])[0], StringComparison.Ordinal);
    }

    [Fact]
    public void For_NoLimit_MakesNoStatement() => Assert.Equal(
        "No limit was applied; this certificate states results only.", Assert.Single(ConformityStatement.For([])));
}
