namespace LabVolatility.Laboratory.Samples;

/// <summary>A step of the tree.</summary>
/// <param name="Kind">What it asks for.</param>
/// <param name="Times">How many times at most before the next step follows, 1 or more.</param>
/// <param name="Containers">How many containers each time, for <see cref="RetestKind.MoreContainers"/>; else 0.</param>
public sealed record RetestStep(RetestKind Kind, int Times = 1, int Containers = 0);
