namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Who signed, as what, and what the signature means.</summary>
public sealed record SignatureLine(string Name, string Role, string Meaning, DateTimeOffset SignedAt);
