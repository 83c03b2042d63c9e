namespace LabVolatility.Web.Api.Bench;

/// <summary>A page of results; next is what to send as after for the following page, null on the last one.</summary>
public sealed record ResultListAnswer(IReadOnlyList<ResultLine> Results, string? Next);
