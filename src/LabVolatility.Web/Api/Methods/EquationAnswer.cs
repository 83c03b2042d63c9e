namespace LabVolatility.Web.Api.Methods;

/// <summary>An equation as printed.</summary>
public sealed record EquationAnswer(string Unit, string Equation, string Source, string Status);
