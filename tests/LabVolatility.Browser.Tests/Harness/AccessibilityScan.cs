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

    // What holds is not listed: on a long page that list takes longer than the scan.
    private static readonly HashSet<ResultType> Broken = [ResultType.Violations];

    /// <summary>Every rule.</summary>
    public static AxeRunOptions Everything { get; } = new()
    {
        ResultTypes = Broken,
        RunOnly = RunOnlyOptions.Tags(Tags),
        // Off by default in the scanner, though it is of level AA.
        Rules = new Dictionary<string, RuleOptions> { ["target-size"] = new() { Enabled = true } },
    };

    /// <summary>What a theme can change.</summary>
    public static AxeRunOptions Colours { get; } = new() { ResultTypes = Broken, RunOnly = RunOnlyOptions.Rules("color-contrast", "link-in-text-block") };

    /// <summary>Where a rule of WCAG is broken seriously or critically, with rule and selector; writes out what else it found.</summary>
    public static async Task<IReadOnlyList<string>> RunAsync(IPage page, AxeRunOptions options, string where)
    {
        // What is half under the line at the top is no small target.
        await page.EvaluateAsync("window.scrollTo(0, 0)");
        var found = (await page.RunAxe(options)).Violations;
        foreach (var remark in found.Where(item => !Fails(item)))
            TestContext.Current.TestOutputHelper?.WriteLine($"Accessibility remark at {where}: {Described(remark)}");
        return [.. found.Where(Fails).Select(item => $"{where}: {Described(item)}")];
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
