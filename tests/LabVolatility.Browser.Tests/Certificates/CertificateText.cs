using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;

namespace LabVolatility.Browser.Tests.Certificates;

/// <summary>What a certificate says, read from the document itself.</summary>
internal static class CertificateText
{
    /// <summary>Fetches it as the person at the page does; its words with one space between them.</summary>
    public static async Task<string> ReadAsync(IPage page, string? address)
    {
        Assert.NotNull(address);
        var answer = await page.Context.APIRequest.GetAsync(address);
        Assert.Equal("application/pdf", answer.Headers["content-type"]);
        using var pdf = PdfDocument.Open(await answer.BodyAsync());
        return string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }
}
