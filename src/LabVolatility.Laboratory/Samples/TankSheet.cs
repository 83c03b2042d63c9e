namespace LabVolatility.Laboratory.Samples;

/// <summary>A tank with what last happened to it.</summary>
/// <param name="Tank">The tank.</param>
/// <param name="Movements">The newest first.</param>
/// <param name="Standing">Samples drawn since the contents last changed.</param>
/// <param name="LastChange">When the contents last changed; null where nothing is recorded.</param>
public sealed record TankSheet(
    Tank Tank, IReadOnlyList<TankMovement> Movements, IReadOnlyList<StandingSample> Standing, DateTimeOffset? LastChange);
