namespace LabVolatility.Laboratory.Records;

/// <summary>What became of one recorded thing: null before it was added, null after it was deleted.</summary>
/// <param name="Itself">The thing, for a notice.</param>
/// <param name="BelongsTo">What it refers to.</param>
/// <param name="Before">Canonical text.</param>
/// <param name="After">Canonical text.</param>
internal sealed record Change(NamedThing Itself, IReadOnlyList<NamedThing> BelongsTo, string? Before, string? After);
