using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;
using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Samples;

/// <summary>A hand blend recorded by the analyst, from the blendstock's sample to the blend's own labels.</summary>
public sealed class HandBlendPageTests(Stage stage)
{
    public static TheoryData<string> Screens => [Screen.Desk.Name, Screen.Tablet.Name];

    [Theory, MemberData(nameof(Screens))]
    public async Task HandBlend_TooWarmAndThenCold_IsRecorded(string screen)
    {
        var blendstock = await BlendstockAsync();
        await stage.VisitAsync(Screen.Named(screen), DemoPerson.Analyst, async visit =>
        {
            await visit.OpenAsync($"/samples/{blendstock}");
            await visit.Page.ClickAsync("#to-hand-blend");
            await FillAsync(visit.Page, "4,0");
            await visit.Page.ClickAsync("#make-blend");
            await Assertions.Expect(visit.Page.Locator("#field-temperature-problem")).ToContainTextAsync("0 to 1 °C");
            await visit.UsableAsync();
            await visit.PictureAsync("hand-blend-too-warm");

            await visit.Page.FillAsync("#field-temperature", "0,5");
            await visit.Page.ClickAsync("#make-blend");

            await Assertions.Expect(visit.Page.Locator("#hand-blend")).ToContainTextAsync("100 · 50 / (450 + 50) = 10.0 % (V/V) ethanol");
            await Assertions.Expect(visit.Page.Locator("#hand-blend")).ToContainTextAsync("not measured: no ethanol allowance");
            await visit.Page.FillAsync("#field-ethanolPercent", "9,8");
            await visit.Page.FillAsync("#field-method", "infrared");
            await visit.Page.ClickAsync("#enter-content");
            await Assertions.Expect(visit.Page.Locator("#hand-blend")).ToContainTextAsync("9.8 % (V/V) by infrared");
            await visit.UsableAsync();
            await visit.PictureAsync("hand-blend-made");
        });
    }

    private static async Task FillAsync(IPage page, string temperature)
    {
        await page.Locator("#make-blend").WaitForAsync();
        foreach (var caution in await page.Locator("input[id^=field-confirmed]").AllAsync())
            await caution.CheckAsync();
        await page.SelectOptionAsync("#field-containerNumber", "1");
        await page.FillAsync("#field-blendstockVolume", "450");
        await page.FillAsync("#field-ethanolVolume", "50 mL");
        await page.FillAsync("#field-ethanolLot", "E-26-07");
        await page.FillAsync("#field-temperature", temperature);
    }

    private async Task<string> BlendstockAsync()
    {
        using var client = new HttpClient { BaseAddress = stage.Address };
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", TestSettings.DemoKey);
        var now = TimeProvider.System.GetUtcNow();
        var bottle = new { container = "glass-bottle", containerVolume = new { value = 1, unit = "L" }, fillPercent = 75, seal = "HB-1" };
        using var answer = await client.PostAsJsonAsync(new Uri("api/v1/samples", UriKind.Relative), new
        {
            grade = "BOB-9",
            level = "running",
            sampledAt = now.AddHours(-1),
            sampledBy = "Field operator",
            receivedAt = now.AddMinutes(-20),
            containers = new[] { bottle, bottle, bottle },
        }, TestContext.Current.CancellationToken);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.IsSuccessStatusCode, text);
        return JsonDocument.Parse(text).RootElement.GetProperty("number").GetString()!;
    }
}
