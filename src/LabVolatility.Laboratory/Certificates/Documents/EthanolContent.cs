namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>A measured ethanol content, percent by volume as reported.</summary>
public sealed record EthanolContent(string Percent, string Method);
