namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>A column of a table; shares are relative to their sum.</summary>
internal sealed record TableColumn(string Title, double Share, bool RightAligned = false);
