namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>Something that was changed after it had been reported.</summary>
public sealed record AmendmentLine(string What, string Before, string After, string Why, string By, DateTimeOffset At);
