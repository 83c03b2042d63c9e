using LabVolatility.Core.Assessment;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Brings the third laboratory in: the outlier of the three is dropped.</summary>
internal static class DisputeJudge
{
    /// <returns>Null where no party's result differs from ours, or no third laboratory has reported a like one.</returns>
    public static DisputeEvidence? Judge(IReadOnlyList<PartyEvidence> parties)
    {
        var party = parties.LastOrDefault(p => p.Kind != PartyKind.ThirdLaboratory && p.Comparison?.Agree == false);
        var third = party is null ? null : parties.LastOrDefault(p =>
            p.Kind == PartyKind.ThirdLaboratory && p.Comparison?.Theirs is not null && p.Quantity == party.Quantity && p.Comparison.Unit == party.Comparison!.Unit);
        if (party?.Comparison is not { } first || third?.Comparison is not { } second)
            return null;
        (string Name, LaboratoryMean Found)[] all =
        [
            ("our laboratory", new(first.Ours!.Value, first.OurCount)),
            (party.Laboratory, new(first.Theirs!.Value, party.Count)),
            (third.Laboratory, new(second.Theirs!.Value, third.Count)),
        ];
        var verdict = ThreeLaboratories.Judge(all, first.Reproducibility, first.Repeatability, first.Unit);
        return new DisputeEvidence(
            party.Quantity, first.Unit, verdict.Dropped is { } index ? all[index].Name : null, verdict.Mean, verdict.Why, verdict.Arithmetic);
    }
}
