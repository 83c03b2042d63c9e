using LabVolatility.Core.Limits;
using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>Holds a batch against the limits of its own state, and each hand blend made from it against those of a hand blend.</summary>
internal static class StateJudge
{
    /// <param name="Limits">Each with its outcome.</param>
    /// <param name="Remarks">Days and places without a limit; edges that leave nothing.</param>
    /// <param name="Incomplete">The limits can't be picked.</param>
    public sealed record Judged(IReadOnlyList<LimitEvidence> Limits, IReadOnlyList<string> Remarks, bool Incomplete);

    public static Judged Judge(
        Batch batch, Grade grade, IReadOnlyList<Area> areas, IReadOnlyList<PrecisionStatement> precision, IReadOnlyList<AssessedSample> samples,
        List<LevelEvidence> levels)
    {
        var drawn = samples.Where(s => s.Evidence.HandBlend is null).ToList();
        var own = BatchLimits.Pick(areas, batch, grade);
        List<LimitEvidence> limits = [.. own.Limits.Select(l => LimitJudge.Judge(l, drawn, precision, grade, levels) with { State = batch.State })];
        var remarks = own.Remarks.ToList();
        foreach (var blend in samples.Where(s => s.Counts && s.Evidence.HandBlend is not null))
        {
            var picked = BatchLimits.Pick(areas, batch, grade, blend.Evidence.HandBlend);
            limits.AddRange(picked.Limits.Select(l => LimitJudge.Judge(l, [blend], precision, grade, []) with
            {
                State = ProductState.HandBlend,
                HandBlend = blend.Sample.Number,
            }));
            remarks.AddRange(picked.Remarks.Except(own.Remarks).Select(remark => $"Hand blend {blend.Sample.Number}: {remark}"));
        }

        return new Judged(limits, remarks, own.Incomplete);
    }
}
