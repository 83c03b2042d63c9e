namespace LabVolatility.Web.Api.Precision;

/// <summary>What results of one laboratory on one material are worth, and what to do next.</summary>
public sealed record PrecisionAnswer(
    Quantity? Repeatability, Quantity? Reproducibility, bool? Acceptable, Quantity Mean, string Reported, IReadOnlyList<int> Used, string Next, int? Needed);
