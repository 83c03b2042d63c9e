namespace LabVolatility.Web.Api.Certificates;

/// <summary>What a recipient may know of a certificate: nothing else.</summary>
public sealed record CertificateCheckAnswer(string Number, string Batch, string Grade, string Decision, DateOnly Date, bool Superseded);
