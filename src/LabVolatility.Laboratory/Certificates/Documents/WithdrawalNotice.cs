namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>The act by which a release was withdrawn.</summary>
public sealed record WithdrawalNotice(string By, string Role, DateTimeOffset At, string Why);
