namespace LabVolatility.Laboratory.Certificates;

/// <summary>A certificate by its number, revision and check code.</summary>
public sealed record IssuedCertificate(string Number, int Revision, string CheckCode);
