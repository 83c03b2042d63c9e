using System.Globalization;
using System.Text.RegularExpressions;
using LabVolatility.Web.Layout;
using LabVolatility.Web.Tests.Setup;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Layout;

/// <summary>Colours of the style sheet against WCAG 2.2, 1.4.3 and 1.4.11.</summary>
public sealed partial class ContrastTests
{
    private const double Text = 4.5;
    private const double Edge = 3.0;

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    public async Task Colours_OfATheme_CanBeRead(string theme)
    {
        var colours = (await SheetAsync())[theme];

        foreach (var paper in new[] { "paper", "sheet", "well" })
        {
            foreach (var ink in new[] { "ink", "muted", "accent", "good", "bad", "open" })
                Assert.True(Ratio(colours[ink], colours[paper]) >= Text, $"{ink} on {paper}, {theme}: {Ratio(colours[ink], colours[paper]):F2}");
            Assert.True(Ratio(colours["edge"], colours[paper]) >= Edge, $"edge on {paper}, {theme}");
        }

        foreach (var tone in new[] { "good", "bad", "open", "accent" })
        {
            Assert.True(Ratio(colours["ink"], colours[$"{tone}-wash"]) >= Text, $"ink on {tone}-wash, {theme}");
            Assert.True(Ratio(colours[tone], colours[$"{tone}-wash"]) >= Text, $"{tone} on {tone}-wash, {theme}: {Ratio(colours[tone], colours[$"{tone}-wash"]):F2}");
        }

        Assert.True(Ratio(colours["on-accent"], colours["accent"]) >= Text);
    }

    [Fact]
    public async Task Theme_OfTheComponents_IsTheStyleSheets()
    {
        var sheet = await SheetAsync();

        Assert.Equal(sheet["light"]["accent"], LabTheme.Theme.PaletteLight.Primary.ToString(MudBlazor.Utilities.MudColorOutputFormats.Hex));
        Assert.Equal(sheet["light"]["paper"], LabTheme.Theme.PaletteLight.Background.ToString(MudBlazor.Utilities.MudColorOutputFormats.Hex));
        Assert.Equal(sheet["dark"]["accent"], LabTheme.Theme.PaletteDark.Primary.ToString(MudBlazor.Utilities.MudColorOutputFormats.Hex));
        Assert.Equal(sheet["dark"]["paper"], LabTheme.Theme.PaletteDark.Background.ToString(MudBlazor.Utilities.MudColorOutputFormats.Hex));
    }

    private static async Task<Dictionary<string, Dictionary<string, string>>> SheetAsync()
    {
        await using var host = await LabHost.StartAsync();
        var file = host.Services.GetRequiredService<IWebHostEnvironment>().WebRootFileProvider.GetFileInfo("lab.css");
        using var reader = new StreamReader(file.CreateReadStream());
        var css = await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
        return new() { ["light"] = Block(css, ":root {"), ["dark"] = Block(css, ":root[data-theme=\"dark\"] {") };
    }

    private static Dictionary<string, string> Block(string css, string head)
    {
        var begin = css.IndexOf(head, StringComparison.Ordinal) + head.Length;
        var block = css[begin..css.IndexOf('}', begin)];
        return Colour().Matches(block).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
    }

    private static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string hex)
    {
        var parts = Enumerable.Range(0, 3).Select(i => int.Parse(hex.AsSpan(1 + (2 * i), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToList();
        return (0.2126 * parts[0]) + (0.7152 * parts[1]) + (0.0722 * parts[2]);
    }

    [GeneratedRegex("--([a-z-]+): (#[0-9a-f]{6})")]
    private static partial Regex Colour();
}
