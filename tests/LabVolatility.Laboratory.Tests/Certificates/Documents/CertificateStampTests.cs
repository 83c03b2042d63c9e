using LabVolatility.Laboratory.Certificates.Documents;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Certificates.Documents;

public sealed class CertificateStampTests
{
    private const string Words = "SUPERSEDED by NR-26-00417, revision 2";

    [Fact]
    public void Apply_IssuedBytes_WordsOnEachPageAndNothingLost()
    {
        var issued = CertificatePdf.Write(CertificateContents.Long());
        var before = PdfReading.Texts(issued);
        byte[] kept = [.. issued];

        var copy = PdfReading.Texts(CertificateStamp.Apply(issued, Words));

        Assert.Equal(kept, issued);
        Assert.Equal(before.Count, copy.Count);
        for (var page = 0; page < copy.Count; page++)
        {
            Assert.Contains(Words, copy[page], StringComparison.Ordinal);
            Assert.Equal(
                before[page].Replace(" ", "", StringComparison.Ordinal),
                copy[page].Replace(Words, "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal));
        }
    }
}
