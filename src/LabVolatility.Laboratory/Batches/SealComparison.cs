namespace LabVolatility.Laboratory.Batches;

/// <summary>Holds the seal numbers of a split sample against those of our containers.</summary>
internal static class SealComparison
{
    /// <param name="stated">As typed, parted by commas or semicolons.</param>
    /// <param name="ours">The seals recorded for our containers.</param>
    public static SealMatch Of(string? stated, IEnumerable<string?> ours)
    {
        var theirs = (stated ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (theirs.Length == 0)
            return SealMatch.NotStated;
        var recorded = ours.Where(s => !string.IsNullOrWhiteSpace(s)).Select(s => s!.Trim()).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return recorded.Count == 0 ? SealMatch.OursNotRecorded
            : theirs.All(recorded.Contains) ? SealMatch.Matches
            : SealMatch.NotOurs;
    }
}
