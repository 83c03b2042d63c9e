using System.Text;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>An automatic accessibility scan after WCAG 2.2 AA.</summary>
internal static class AccessibilityScan
{
    private static readonly string[] Tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

    private static AxeRunOptions Options => new()
    {
        RunOnly = RunOnlyOptions.Tags(Tags),
        // Off by default in the scanner, though it is of level AA.
        Rules = new Dictionary<string, RuleOptions> { ["target-size"] = new() { Enabled = true } },
    };

    /// <summary>Fails where a rule of WCAG is broken seriously or critically; writes out what else it found.</summary>
    public static async Task RunAsync(IPage page, string where)
    {
        var found = (await page.RunAxe(Options)).Violations;
        var failing = found.Where(Fails).ToList();

        foreach (var remark in found.Except(failing))
            TestContext.Current.TestOutputHelper?.WriteLine($"Accessibility remark at {where}: {Described(remark)}");
        Assert.True(failing.Count == 0, $"Accessibility at {where}:\n{string.Join('\n', failing.Select(Described))}");
    }

    private static bool Fails(AxeResultItem item) => item.Impact is "serious" or "critical" && !item.Tags.Contains("best-practice");

    private static string Described(AxeResultItem item)
    {
        var text = new StringBuilder($"{item.Id} ({item.Impact}): {item.Help}");
        foreach (var node in item.Nodes)
            text.Append('\n').Append("  ").Append(node.Target).Append("  ").Append(node.Html);
        return text.ToString();
    }
}
