using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

internal static class Rule
{
    /// <summary>Fails with every breach in full, where xunit's own assertions stop at the fifth.</summary>
    public static void HasNo(IEnumerable<string?> breaches)
    {
        var found = breaches.ToList();
        Assert.True(found.Count == 0, $"The rule is broken by:\n  {string.Join("\n  ", found)}");
    }
}
