namespace LabVolatility.Laboratory.Today;

/// <summary>Reference data that wait for somebody.</summary>
/// <param name="Drafts">Drafts that another person than their author approves, the oldest first.</param>
/// <param name="FromMemory">Shipped limits that the laboratory has not confirmed in its own copy.</param>
public sealed record ReferenceWork(IReadOnlyList<ReferenceDraft> Drafts, int FromMemory);
