using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api;

/// <summary>Something that the method remarks or rejects.</summary>
public sealed record FindingAnswer(string Code, string Severity, string Message)
{
    public static FindingAnswer Of(Finding finding) => new(finding.Code, finding.Severity.ToString().ToLowerInvariant(), finding.Message);
}
