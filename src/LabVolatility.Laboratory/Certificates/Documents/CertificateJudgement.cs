namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The limits, what was compared with them, and the statement that follows.</summary>
internal static class CertificateJudgement
{
    private const string FromMemory = "Figure from memory, not yet confirmed by the laboratory.";

    public static void Write(PageFlow flow, CertificateContent content)
    {
        if (content.Limits.Count > 0)
        {
            flow.Heading("Limits");
            TableWriter.Write(
                flow,
                [
                    new("Limit", 2.2), new("Effective limit", 2.2), new("Source and standing", 2.9),
                    new("Compared", 1.4, RightAligned: true), new("Margin", 1.3, RightAligned: true),
                    new("Decision rule", 2.8), new("Outcome", 1.9),
                ],
                content.Limits.Select(Limit));
        }

        flow.Heading("Statement of conformity (ISO/IEC 17025:2017, 7.8.6.2)");
        foreach (var sentence in ConformityStatement.For(content.Limits))
        {
            flow.Paragraph(sentence, flow.Faces.Body);
            flow.Top += 2;
        }
    }

    private static IReadOnlyList<TableCell> Limit(LimitLine limit) =>
    [
        TableCell.Of(
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
