namespace LabVolatility.Laboratory.Batches;

/// <summary>Which batches, in which order, and from where on.</summary>
/// <param name="Text">Part of a batch number, tank or grade.</param>
/// <param name="Standing">Only these.</param>
/// <param name="Grade">Only this grade.</param>
/// <param name="ByNeed">Only batches with a slot, the earliest first; else the newest first.</param>
/// <param name="After">The cursor of the page before.</param>
public sealed record BatchesFilter(
    string? Text = null, BatchStanding? Standing = null, string? Grade = null, bool ByNeed = false, BatchCursor? After = null);
