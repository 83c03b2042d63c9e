namespace LabVolatility.Laboratory.Batches;

/// <summary>A page of the list; <paramref name="Next"/> is null on the last one.</summary>
public sealed record BatchesPage(IReadOnlyList<ListedBatch> Lines, BatchCursor? Next, IReadOnlyList<string> Grades);
