using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Laboratory.Samples;

/// <summary>The rule "a movement voids the sample": a tank that received product, butane or was circulated after sampling no longer holds what was sampled.</summary>
public static class MovementVoidsSample
{
    public const string Rule = "movement-voids-sample";

    /// <summary>Why the sample is void for a decision, or null; judged by the tank that the sample itself names.</summary>
    public static string? Reason(Sample sample, IEnumerable<TankMovement> movements, LaboratoryTime time) =>
        Reason(sample, sample.TankCode, movements, time);

    /// <summary>Why the sample is void for a decision, or null.</summary>
    /// <param name="sample">The sample.</param>
    /// <param name="tank">The tank it was drawn from: its own, else its batch's; null: none.</param>
    /// <param name="movements">What happened to tanks.</param>
    /// <param name="time">The laboratory's time.</param>
    public static string? Reason(Sample sample, string? tank, IEnumerable<TankMovement> movements, LaboratoryTime time)
    {
        var later = movements
            .Where(m => m.TankCode == tank && m.ChangesContents && m.At > sample.SampledAt)
            .OrderBy(m => m.At).ThenBy(m => m.Id).FirstOrDefault();
        return later is null
            ? null
            : $"void for a decision: {Word(later.Kind)} in tank {later.TankCode} at {time.Local(later.At):yyyy-MM-dd HH:mm}, after sampling";
    }

    public static string Word(MovementKind kind) => kind switch
    {
        MovementKind.Receipt => "receipt",
        MovementKind.Butane => "butane added",
        MovementKind.Circulation => "circulation",
        _ => "delivery",
    };
}
