namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>A limit that is not met, and who accepted that; never a legal limit.</summary>
/// <param name="Limit">The limit in words: "DVPE maximum 60.0 kPa (contract)".</param>
public sealed record ConcessionNotice(string Limit, string Text, string GrantedBy, string Role, DateTimeOffset GrantedAt);
