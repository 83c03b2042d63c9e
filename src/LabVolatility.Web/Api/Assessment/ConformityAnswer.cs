namespace LabVolatility.Web.Api.Assessment;

/// <summary>The overall outcome and each limit's own.</summary>
public sealed record ConformityAnswer(string Outcome, IReadOnlyList<LimitAnswer> Limits, string? Season);
