namespace LabVolatility.Web.Api;

/// <summary>Something that may stand behind the question mark.</summary>
internal sealed record QueryAsked(string Name, string About, string? Format);
