namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Another revision or number that this one replaces, or that replaces it, and why.</summary>
public sealed record ReplacedCertificate(string Number, int Revision, string Why, DateTimeOffset IssuedAt);
