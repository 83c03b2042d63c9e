namespace LabVolatility.Web.Api;

/// <summary>A member of an object; one that isn't required may be absent or null.</summary>
internal sealed record Member(string Name, Shape Shape, bool Required = false);
