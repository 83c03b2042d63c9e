using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Samples;

/// <summary>What is done on each occasion, agreed before testing: nobody tests until it fits.</summary>
public sealed record RetestTree(IReadOnlyList<RetestRule> Rules)
{
    /// <summary>The tree of a grade for which none was set.</summary>
    /// <remarks>Common practice: what is sealed is tested first, then it is drawn again; every branch ends with a hold.</remarks>
    public static RetestTree CommonPractice { get; } = new(
    [
        new(RetestOccasion.SampleVoid, [new(RetestKind.Resample, 2), new(RetestKind.HoldAndCall)]),
        new(RetestOccasion.DuplicatesDiffer, [new(RetestKind.MoreContainers, 2, 1), new(RetestKind.HoldAndCall)]),
        new(RetestOccasion.LevelsDiffer, [new(RetestKind.MixAndResample, 2), new(RetestKind.HoldAndCall)]),
        new(RetestOccasion.PartyDiffers, [new(RetestKind.MoreContainers, 1, 1), new(RetestKind.ThirdLaboratory), new(RetestKind.HoldAndCall)]),
        new(RetestOccasion.DoesNotConform, [new(RetestKind.MoreContainers, 1, 1), new(RetestKind.HoldAndCall)]),
        new(RetestOccasion.NotDecided, [new(RetestKind.MoreContainers, 2, 1), new(RetestKind.HoldAndCall)]),
    ]);

    /// <summary>Common practice until the laboratory sets its own.</summary>
    public FactStatus Status =>
        Rules.Count == CommonPractice.Rules.Count
        && Rules.Zip(CommonPractice.Rules).All(p => p.First.Occasion == p.Second.Occasion && p.First.Steps.SequenceEqual(p.Second.Steps))
            ? FactStatus.CommonPractice
            : FactStatus.Laboratory;

    /// <summary>The rule for an occasion; a hold where none was set.</summary>
    public RetestRule For(RetestOccasion occasion) =>
        Rules.FirstOrDefault(r => r.Occasion == occasion) ?? new RetestRule(occasion, [new(RetestKind.HoldAndCall)]);
}
