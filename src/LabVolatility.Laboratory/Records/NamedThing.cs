namespace LabVolatility.Laboratory.Records;

/// <summary>A recorded thing as a notice names it.</summary>
/// <param name="Kind">What the record calls it: "sample".</param>
/// <param name="Key">Its key as it stands in the record.</param>
/// <param name="Name">What people call it, its number or code; null where it has none, or none is known yet.</param>
public sealed record NamedThing(string Kind, string Key, string? Name = null);
