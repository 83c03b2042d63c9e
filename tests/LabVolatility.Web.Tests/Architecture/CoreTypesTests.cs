using System.Reflection;
using System.Runtime.CompilerServices;
using Xunit;

namespace LabVolatility.Web.Tests.Architecture;

public sealed class CoreTypesTests
{
    private static IReadOnlyList<Type> PublicStructs { get; } =
        [.. Assembly.Load("LabVolatility.Core").GetExportedTypes().Where(type => type is { IsValueType: true, IsEnum: false })];

    [Fact]
    public void PublicStructs_All_AreReadOnly()
    {
        var changeable = PublicStructs.Where(type => type.GetCustomAttribute<IsReadOnlyAttribute>() is null).Select(type => type.FullName);

        Assert.NotEmpty(PublicStructs);
        Rule.HasNo(changeable);
    }
}
