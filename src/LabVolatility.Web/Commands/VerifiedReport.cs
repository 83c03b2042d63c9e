namespace LabVolatility.Web.Commands;

internal sealed record VerifiedReport(IReadOnlyList<VerifiedRow> Checks);
