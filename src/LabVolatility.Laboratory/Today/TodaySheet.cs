using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Laboratory.Today;

/// <summary>What waits for one person now. A part is null where it is not that person's work.</summary>
public sealed record TodaySheet
{
    /// <summary>When the shift that runs now began.</summary>
    public required DateTimeOffset ShiftSince { get; init; }

    /// <summary>Tests due and instruments as they stand: for who measures.</summary>
    public BenchDay? Bench { get; init; }

    /// <summary>Batches without a decision or on hold: for who decides.</summary>
    public IReadOnlyList<WaitingBatch>? Waiting { get; init; }

    /// <summary>Hand-over notes that nobody has taken: for who decides.</summary>
    public IReadOnlyList<OpenHandover>? HandedOver { get; init; }

    /// <summary>Decisions whose evidence changed after they were signed.</summary>
    public IReadOnlyList<MarkedDecision>? ForReview { get; init; }

    /// <summary>Margins of the last batches decided, the latest first: for who blends.</summary>
    public IReadOnlyList<BatchMargin>? Margins { get; init; }

    /// <summary>The next change of limits per destination, the earliest first.</summary>
    public IReadOnlyList<SeasonChange>? Seasons { get; init; }

    /// <summary>Reference data that wait for approval or confirmation: for the quality manager.</summary>
    public ReferenceWork? Reference { get; init; }

    /// <summary>Passwords and keys that ask for attention: for the administrator.</summary>
    public AccountWork? Accounts { get; init; }

    /// <summary>Where the audit records stand: for the auditor.</summary>
    public TrailHead? Trail { get; init; }

    /// <summary>Who decided what in this shift, the latest first.</summary>
    public required IReadOnlyList<ShiftDecision> Decisions { get; init; }
}
