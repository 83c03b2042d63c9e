using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace LabVolatility.Laboratory.Storage;

internal static class JsonColumn
{
    public const string Annotation = "LabVolatility:Json";

    /// <summary>Keeps a list or a record as JSON text in one column.</summary>
    /// <remarks>Both are replaced, never changed in place: the same object is unchanged, and is its own snapshot.</remarks>
    public static PropertyBuilder<T> HasJson<T>(this PropertyBuilder<T> property)
        where T : class
    {
        var converter = new ValueConverter<T, string>(value => JsonText.Write(value), text => JsonText.Read<T>(text));
        var comparer = new ValueComparer<T>(
            (left, right) => ReferenceEquals(left, right) || JsonText.Write(left) == JsonText.Write(right),
            value => JsonText.Write(value).GetHashCode(StringComparison.Ordinal),
            value => value);
        property.HasConversion(converter, comparer);
        return property.HasAnnotation(Annotation, true);
    }
}
