using System.Text.RegularExpressions;
using LabVolatility.Browser.Tests.Harness;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>A page by the template of its address, with an address at which the demo shows something there.</summary>
/// <param name="Template">As the page declares it.</param>
/// <param name="Address">What fills the template; words in braces are named by the test.</param>
/// <param name="Person">Who sees the most of it; null: nobody has signed in.</param>
/// <param name="HasCircuit">False for a page that is written once and not alive.</param>
internal sealed partial record ScannedPage(string Template, string Address, DemoPerson? Person, bool HasCircuit = true)
{
    /// <summary>The address where a laboratory holds nothing: shipped reference data are there, whatever else is named is not.</summary>
    public string EmptyAddress => Placeholder().Replace(Address, "none");

    public Task OpenAsync(Visit visit, string address) => HasCircuit ? visit.OpenAsync(address) : visit.OpenStaticAsync(address);

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Placeholder();
}
