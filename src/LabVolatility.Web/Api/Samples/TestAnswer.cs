namespace LabVolatility.Web.Api.Samples;

public sealed record TestAnswer(string Method, string State, int Wanted, DateTimeOffset? DueAt, string? Why);
