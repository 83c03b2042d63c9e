namespace LabVolatility.Web.Api.Methods;

/// <summary>An equation as printed; for one size of container where it names one.</summary>
public sealed record EquationAnswer(string Unit, Quantity? ContainerVolume, string Equation, string Source, string Status);
