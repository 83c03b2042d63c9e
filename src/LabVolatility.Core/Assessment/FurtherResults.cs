using LabVolatility.Core.Limits;

namespace LabVolatility.Core.Assessment;

/// <summary>How many more results at the present mean would decide a guarded verdict.</summary>
internal static class FurtherResults
{
    private const decimal MostResults = 1_000_000m;

    // The first k is worked out to within a step or two; more are never needed.
    private const int MostSteps = 10;

    /// <summary>The number of further results; null where none can decide, or r is not set.</summary>
    /// <param name="input">A guarded input that is not decided.</param>
    /// <param name="margin">From the value to the nearest edge of the limit, positive inside.</param>
    /// <remarks>
    /// Solves z·R1/(1.96·√2) = |margin| for k in R1 = √(R² − r²(1 − 1/k)), then steps to the first whole k.
    /// Source: ISO 4259-2:2017, mean of several results (from memory).
    /// </remarks>
    public static int? ToDecide(LimitInput input, decimal margin)
    {
        if (input.Repeatability is not { } r || input.Reproducibility is not { } bigR || r > bigR || margin == 0)
            return null;
        var guardOfOne = Uncertainty.Guard(1m, input.Confidence);
        var wanted = Math.Abs(margin) / guardOfOne;
        var room = (wanted * wanted) - (bigR * bigR) + (r * r);
        if (room <= 0 || r * r > room * MostResults)
            return null;
        var first = Math.Max(input.Count + 1, (int)decimal.Ceiling(r * r / room) - 1);
        for (var total = first; total <= first + MostSteps; total++)
        {
            if (Decides(input, margin, total))
                return total - input.Count;
        }

        return null;
    }

    private static bool Decides(LimitInput input, decimal margin, int total)
    {
        var ofMean = Uncertainty.OfMean(input.Reproducibility!.Value, input.Repeatability, total)!.Value;
        return GuardedRule.Verdict(margin, Uncertainty.Guard(ofMean, input.Confidence)) != Outcome.NotDecided;
    }
}
