using LabVolatility.Browser.Tests.Batches;
using LabVolatility.Browser.Tests.Harness;
using LabVolatility.Browser.Tests.Samples;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace LabVolatility.Browser.Tests.Certificates;

/// <summary>A certificate after it has left the house.</summary>
public sealed class CertificateStandingTests(Stage stage)
{
    private const string InForce = "genuine and in force";
    private const string NoLonger = "superseded or no longer in force";

    [Fact]
    public async Task Certificate_OfAnAmendedResult_HoldsUntilTheDecisionIsWithdrawn()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        var (first, second) = ("", "");
        await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, async visit =>
            first = await Signing.ReleaseAsync(visit, prepared.Batch, Signing.OnCallsPassword));

        await stage.VisitAsync(Screen.Desk, DemoPerson.ShiftChemist, visit => AmendAsync(visit, prepared.Sample, "80.2", "misread by one digit"));

        await stage.VisitAsync(Screen.Desk, DemoPerson.OtherAnalyst, async visit =>
        {
            await visit.OpenAsync($"/batches/{prepared.Batch}");
            await Expect(visit.Page.Locator("#for-review")).ToContainTextAsync("misread by one digit");
        });
        await CertificateCheck.ExpectAsync(stage, first, prepared.Batch, InForce);

        await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, async visit =>
        {
            await Signing.WithdrawAsync(visit, prepared.Batch, "the result was amended", Signing.OnCallsPassword);
            await Expect(Signing.Certificate(visit.Page, 1)).ToContainTextAsync("no longer in force");
        });
        await CertificateCheck.ExpectAsync(stage, first, prepared.Batch, NoLonger);

        await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, async visit =>
        {
            second = await Signing.ReleaseAsync(visit, prepared.Batch, Signing.OnCallsPassword, revision: 2);
            await Expect(visit.Page.Locator("#for-review")).ToHaveCountAsync(0);
            var text = await CertificateText.ReadAsync(visit.Page, await Signing.Certificate(visit.Page, 2).Locator("a").First.GetAttributeAsync("href"));
            Assert.Contains("73.6", text, StringComparison.Ordinal); // 0.965 · 80.2 − 3.78 = 73.613
        });
        Assert.NotEqual(first, second);
        await CertificateCheck.ExpectAsync(stage, first, prepared.Batch, NoLonger);
        await CertificateCheck.ExpectAsync(stage, second, prepared.Batch, InForce);
    }

    [Fact]
    public async Task Check_CodeOfNoCertificate_SaysSo() =>
        await stage.VisitAsync(Screen.Tablet, async visit =>
        {
            await visit.OpenStaticAsync("certificates/check");
            await visit.Page.GetByLabel("Check code").FillAsync("AAAA-BBBB-CCCC");
            await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Check it" }).ClickAsync();

            await Expect(visit.Page.Locator("#not-found")).ToBeVisibleAsync();
            await Expect(visit.Page.GetByLabel("Check code")).ToHaveValueAsync("AAAA-BBBB-CCCC");
        });

    [Fact]
    public async Task Certificate_ForSomebodySignedOut_IsNotGiven()
    {
        using var prepared = await Prepared.MakeAsync(stage);
        await prepared.MeasureAsync(80.0m, "i.fenwick");
        await stage.VisitAsync(Screen.Desk, DemoPerson.OnCall, visit => Signing.ReleaseAsync(visit, prepared.Batch, Signing.OnCallsPassword));

        await stage.VisitAsync(Screen.Desk, async visit =>
        {
            var answer = await visit.Page.Context.APIRequest.GetAsync($"batches/{prepared.Batch}/certificate.pdf");

            Assert.Contains("/sign-in", answer.Url, StringComparison.Ordinal);
            Assert.DoesNotContain("pdf", answer.Headers["content-type"], StringComparison.Ordinal);
        });
    }

    private static async Task AmendAsync(Visit visit, string sample, string pressure, string reason)
    {
        var page = visit.Page;
        await visit.OpenAsync($"/samples/{sample}");
        await page.GetByText("Amend it, or set it aside").ClickAsync();
        await page.GetByLabel("Total pressure").FillAsync(pressure);
        await page.GetByLabel("Reason", new PageGetByLabelOptions { Exact = true }).FillAsync(reason);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Amend the determination" }).ClickAsync();
        await Expect(page.Locator(".revisions")).ToContainTextAsync(reason);
    }
}
