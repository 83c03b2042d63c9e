namespace LabVolatility.Web.Api;

/// <summary>The statuses besides success that an address answers with.</summary>
internal sealed record ProblemsGiven(IReadOnlyList<int> Statuses);
