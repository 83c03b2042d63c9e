namespace LabVolatility.Web.Api.Methods;

/// <summary>What a method reports from its readings; r and R are null where the laboratory has not entered them.</summary>
public sealed record ResultsAnswer(
    string Method, string Edition, IReadOnlyList<ResultAnswer> Results, Quantity? Repeatability, Quantity? Reproducibility,
    IReadOnlyList<FindingAnswer> Findings);
