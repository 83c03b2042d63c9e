namespace LabVolatility.Laboratory.Batches;

/// <summary>How the levels of a tank agree on one quantity: the rule "levels that disagree are not averaged".</summary>
/// <param name="Quantity">Such as DVPE.</param>
/// <param name="Unit">Unit of the figures.</param>
/// <param name="Values">Level in words and its unrounded mean.</param>
/// <param name="Spread">Largest less smallest.</param>
/// <param name="Allowed">The method's repeatability, or null where it isn't set.</param>
/// <param name="Agree">Null where it can't be judged.</param>
/// <param name="Why">In words, with what to do.</param>
public sealed record LevelEvidence(
    string Quantity, string Unit, IReadOnlyList<LevelValue> Values, decimal Spread, decimal? Allowed, bool? Agree, string Why)
{
    public const string Rule = "levels-that-disagree-are-not-averaged";
}
