using System.Reflection;
using System.Xml.Linq;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

/// <summary>Web → Laboratory → Core, and nothing the other way.</summary>
public sealed class DirectionTests
{
    // Identity's and data protection's tables: storage, not web.
    private static readonly string[] StorageOfAspNet =
    [
        "Microsoft.AspNetCore.Identity.EntityFrameworkCore",
        "Microsoft.AspNetCore.DataProtection.EntityFrameworkCore",
        "Microsoft.AspNetCore.DataProtection",
        "Microsoft.AspNetCore.DataProtection.Abstractions",
        "Microsoft.AspNetCore.Cryptography.Internal",
        "Microsoft.AspNetCore.Cryptography.KeyDerivation",
    ];

    [Fact]
    public void Core_References_AreSystemOnly() =>
        Rule.HasNo(ReferencesOf("LabVolatility.Core").Where(name => name != "System" && !name.StartsWith("System.", StringComparison.Ordinal)));

    // The compiler drops a reference that no code uses yet, so the project file is read too.
    [Fact]
    public void Core_ProjectFile_HasNoReference()
    {
        var project = XDocument.Load(Path.Combine(SourceTree.Root, "src/LabVolatility.Core/LabVolatility.Core.csproj"));

        var references = project.Descendants().Where(e => e.Name.LocalName is "ProjectReference" or "PackageReference" or "FrameworkReference" or "Reference");

        Rule.HasNo(references.Select(reference => reference.ToString()));
    }

    [Fact]
    public void Laboratory_References_HaveNoWeb() =>
        Rule.HasNo(ReferencesOf("LabVolatility.Laboratory").Where(IsWeb));

    [Fact]
    public void Web_References_HaveNoDatabaseDriver() =>
        Rule.HasNo(ReferencesOf("LabVolatility.Web").Where(name =>
            name.Contains("Npgsql", StringComparison.OrdinalIgnoreCase) || name.Contains("Sqlite", StringComparison.OrdinalIgnoreCase)));

    private static bool IsWeb(string name) =>
        name is "LabVolatility.Web" or "MudBlazor"
        || (name.StartsWith("Microsoft.AspNetCore.", StringComparison.Ordinal) && !StorageOfAspNet.Contains(name));

    private static IEnumerable<string> ReferencesOf(string assembly) =>
        Assembly.Load(assembly).GetReferencedAssemblies().Select(reference => reference.Name!).Order(StringComparer.Ordinal);
}
