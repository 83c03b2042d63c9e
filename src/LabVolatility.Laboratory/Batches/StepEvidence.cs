using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>A step of the tree that was taken, as evidence.</summary>
/// <param name="Occasion">What called for it.</param>
/// <param name="Subject">The sample or the quantity it was about.</param>
/// <param name="Place">Its place in the branch, 1 at first.</param>
/// <param name="Branch">The branch as it stood then.</param>
/// <param name="Kind">What was done.</param>
/// <param name="TestId">The test that was tested further.</param>
/// <param name="Wanted">Results in all of the test that was tested further.</param>
/// <param name="Samples">Samples tested further, or called for anew.</param>
/// <param name="Found">What was found, in words.</param>
/// <param name="Reason">Why the person took it.</param>
/// <param name="By">Who.</param>
/// <param name="At">When.</param>
public sealed record StepEvidence(
    RetestOccasion Occasion, string Subject, int Place, IReadOnlyList<RetestStep> Branch, RetestKind Kind, Guid? TestId, int? Wanted,
    IReadOnlyList<string> Samples, string Found, string Reason, string By, DateTimeOffset At);
