using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using LabVolatility.Browser.Tests.Harness;

namespace LabVolatility.Browser.Tests.Accessibility;

/// <summary>The addresses of all pages, as the published application itself holds them.</summary>
internal static class PublishedRoutes
{
    public static IReadOnlyList<string> Templates()
    {
        using var file = File.OpenRead(TestSettings.Application);
        using var image = new PEReader(file);
        var metadata = image.GetMetadataReader();
        return
        [
            .. metadata.CustomAttributes.Select(metadata.GetCustomAttribute).Where(a => IsRoute(a, metadata)).Select(a => Template(a, metadata))
                .Order(StringComparer.Ordinal),
        ];
    }

    private static bool IsRoute(CustomAttribute attribute, MetadataReader metadata) =>
        attribute.Constructor.Kind == HandleKind.MemberReference
        && metadata.GetMemberReference((MemberReferenceHandle)attribute.Constructor).Parent is { Kind: HandleKind.TypeReference } type
        && metadata.StringComparer.Equals(metadata.GetTypeReference((TypeReferenceHandle)type).Name, "RouteAttribute");

    // ECMA-335, II.23.3: a prolog of two bytes, then the constructor's arguments; here one text.
    private static string Template(CustomAttribute attribute, MetadataReader metadata)
    {
        var value = metadata.GetBlobReader(attribute.Value);
        value.ReadUInt16();
        return value.ReadSerializedString()!;
    }
}
