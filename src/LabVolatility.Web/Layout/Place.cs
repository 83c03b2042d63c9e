using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.Layout;

/// <summary>A place of the laboratory as it stands in the rail.</summary>
/// <param name="Name">One plain word.</param>
/// <param name="Path">Its address, such as "/bench".</param>
/// <param name="Right">What a person must hold to see it.</param>
public sealed record Place(string Name, string Path, Right Right);
