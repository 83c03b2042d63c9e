namespace LabVolatility.Laboratory.Samples;

/// <summary>Which samples, in which order, and from where on.</summary>
/// <param name="Text">Part of a sample number, batch, tank or grade.</param>
/// <param name="State">Only these.</param>
/// <param name="Grade">Only this grade.</param>
/// <param name="ByDeadline">Only samples with tests that wait, the earliest deadline first; else the newest first.</param>
/// <param name="After">The cursor of the page before.</param>
public sealed record SamplesFilter(
    string? Text = null, SampleState? State = null, string? Grade = null, bool ByDeadline = false, SampleCursor? After = null);
