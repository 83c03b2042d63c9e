namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Limits, what was compared with them, and what came of it.</summary>
internal static class LimitTable
{
    private const string FromMemory = "Figure from memory, not yet confirmed by the laboratory.";

    /// <param name="flow">The pages.</param>
    /// <param name="limits">Each edge; the words before it stand on top of its first cell, or are null.</param>
    public static void Write(PageFlow flow, IReadOnlyList<(string? Of, LimitLine Limit)> limits) => TableWriter.Write(
        flow,
        [
            new("Limit", 2.2), new("Effective limit", 2.2), new("Source and standing", 2.9),
            new("Compared", 1.4, RightAligned: true), new("Margin", 1.3, RightAligned: true),
            new("Decision rule", 2.8), new("Outcome", 1.9),
        ],
        limits.Select(l => Line(l.Of, l.Limit)));

    private static IReadOnlyList<TableCell> Line(string? of, LimitLine limit) =>
    [
        TableCell.Of(
            of,
            limit.Quantity + (limit.Edge == LimitEdge.Maximum ? ", maximum" : ", minimum"),
            limit.AppliesTo,
            string.Join(", ", limit.SampleNumbers)),
        limit.Allowance is null
            ? TableCell.Of($"{limit.Effective} {limit.Unit}", limit.Base == limit.Effective ? "no allowance" : $"base {limit.Base}")
            : $"{limit.Base} + {limit.Allowance} = {limit.Effective} {limit.Unit}",
        TableCell.Of(limit.Source, limit.Standing, limit.FromMemory ? FromMemory : null),
        limit.Compared is null ? "none" : $"{limit.Compared} {limit.Unit}",
        limit.Margin is null ? "none" : $"{limit.Margin} {limit.Unit}",
        TableCell.Of(limit.Rule, limit.Why is null ? null : "Why: " + limit.Why),
        new(ConformityStatement.Words(limit.Outcome), Bold: true),
    ];
}
