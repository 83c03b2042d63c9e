using System.Diagnostics;
using Microsoft.Playwright;
using Xunit;

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>How long it takes until what somebody does appears on somebody else's open page.</summary>
internal static class Appearance
{
    /// <summary>Generous: the machine may be busy. What was measured is written out.</summary>
    private const int LongestMilliseconds = 10_000;

    // Looked at with every frame that the page draws.
    private const string Shows = "([selector, text]) => [...document.querySelectorAll(selector)].some(e => e.innerText.includes(text))";

    /// <summary>Acts, then waits until each page shows its text; fails where one does not in time.</summary>
    public static async Task MeasureAsync(string what, Func<Task> act, params (IPage Page, string Selector, string Text)[] expected)
    {
        var options = new PageWaitForFunctionOptions { Timeout = 60_000 };
        var seen = expected.Select(e => e.Page.WaitForFunctionAsync(Shows, new[] { e.Selector, e.Text }, options)).ToList();
        var watch = Stopwatch.StartNew();
        await act();
        var acted = watch.ElapsedMilliseconds;
        foreach (var (wait, one) in seen.Zip(expected))
        {
            await wait;
            TestContext.Current.TestOutputHelper?.WriteLine(
                $"{what}: \"{one.Text}\" on {new Uri(one.Page.Url).AbsolutePath} {watch.ElapsedMilliseconds} ms after the act was begun, which took {acted} ms by itself");
            Assert.InRange(watch.ElapsedMilliseconds - acted, 0, LongestMilliseconds);
        }
    }
}
