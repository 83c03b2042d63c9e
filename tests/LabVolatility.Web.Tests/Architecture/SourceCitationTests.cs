using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

/// <summary>Whoever meets a number of a test method can find where it is printed.</summary>
public sealed class SourceCitationTests
{
    private const string Methods = "LabVolatility.Core.Methods";

    private static readonly Lazy<IReadOnlyDictionary<string, string>> Documentation = new(() =>
        XDocument.Load(Path.Combine(AppContext.BaseDirectory, "LabVolatility.Core.xml"))
            .Descendants("member")
            .ToDictionary(member => member.Attribute("name")!.Value, member => member.Value));

    [Fact]
    public void PublicMethods_OfTestMethods_NameTheirSource()
    {
        var methods = Assembly.Load("LabVolatility.Core").GetExportedTypes().Where(IsOfMethods).SelectMany(HandWritten).ToList();

        var unsourced = methods.Where(method => !HasSource(method)).Select(method => $"{method.DeclaringType!.FullName}.{method.Name}").Distinct();

        Assert.NotEmpty(methods);
        Rule.HasNo(unsourced);
    }

    private static bool IsOfMethods(Type type) =>
        type.Namespace is { } space && (space == Methods || space.StartsWith(Methods + ".", StringComparison.Ordinal));

    private static IEnumerable<MethodInfo> HandWritten(Type type) =>
        type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(method => !method.IsSpecialName
                && method.GetCustomAttribute<CompilerGeneratedAttribute>() is null
                && method.GetBaseDefinition().DeclaringType == type);

    private static bool HasSource(MethodInfo method)
    {
        var type = method.DeclaringType!.FullName!.Replace('+', '.');
        var texts = Documentation.Value.Where(entry => IsOverload(entry.Key, $"M:{type}.{method.Name}")).Select(entry => entry.Value).ToList();
        var onType = Documentation.Value.GetValueOrDefault($"T:{type}", "");
        return onType.Contains("Source:", StringComparison.Ordinal)
            || (texts.Count > 0 && texts.All(text => text.Contains("Source:", StringComparison.Ordinal)));
    }

    private static bool IsOverload(string member, string name) =>
        member.StartsWith(name, StringComparison.Ordinal) && (member.Length == name.Length || member[name.Length] is '(' or '`' or '~');
}
