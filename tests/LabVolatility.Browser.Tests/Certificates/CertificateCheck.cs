using LabVolatility.Browser.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Certificates;

/// <summary>A recipient, whom the laboratory does not know, with a certificate in the hand.</summary>
internal static class CertificateCheck
{
    public static Task ExpectAsync(Stage stage, string code, string batch, string standing) =>
        stage.VisitAsync(Screen.Desk, async visit =>
        {
            await visit.OpenStaticAsync($"certificates/check/{code}");

            await Expect(visit.Page.Locator("#found")).ToContainTextAsync(standing);
            await Expect(visit.Page.Locator("#found")).ToContainTextAsync(batch);
        });
}
