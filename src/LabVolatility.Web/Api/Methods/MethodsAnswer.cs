namespace LabVolatility.Web.Api.Methods;

/// <summary>The methods of this build, and those that version 1 of the interface names besides.</summary>
public sealed record MethodsAnswer(IReadOnlyList<MethodAnswer> Methods, IReadOnlyList<string> NotInThisBuild);
