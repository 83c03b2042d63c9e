using LabVolatility.Laboratory.Batches;
using LabVolatility.Web.Batches;
using Xunit;

namespace LabVolatility.Web.Tests.Batches;

public sealed class SignWordsTests
{
    [Theory]
    [InlineData(DecisionKind.Release, "Release batch 26-1042", false, false)]
    [InlineData(DecisionKind.Concession, "Release batch 26-1042 under concession", true, false)]
    [InlineData(DecisionKind.Hold, "Hold batch 26-1042", true, false)]
    [InlineData(DecisionKind.Reject, "Reject batch 26-1042", true, true)]
    [InlineData(DecisionKind.Withdraw, "Withdraw the decision on batch 26-1042", true, true)]
    public void Request_EachKind_NamesActAndMeaningInFull(DecisionKind kind, string act, bool reasonIsDue, bool grave)
    {
        var request = SignWords.Request(kind, Sheets.Of(inForce: kind == DecisionKind.Withdraw ? DecisionKind.Release : null));

        Assert.Equal((act, reasonIsDue, grave), (request.Act, request.ReasonIsDue, request.Grave));
        Assert.Equal(DecisionWords.Meaning(kind, "26-1042"), request.Meaning);
        Assert.NotEmpty(request.Consequences);
    }

    [Fact]
    public void Release_CertificateIssuedBefore_SaysWhichRevisionReplacesIt()
    {
        var sheet = Sheets.Of(certificates: [new("C2600001", 1, "7H2K-9QXB-41TN", DateTimeOffset.UnixEpoch, true)]);

        var request = SignWords.Request(DecisionKind.Release, sheet);

        Assert.Contains("Certificate C2600001 gets revision 2, which replaces the one before.", request.Consequences);
    }
}
