namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>A finding or a remark, under a short heading: "Appearance", "Levels", "Handling".</summary>
public sealed record RemarkLine(string Heading, string Text);
