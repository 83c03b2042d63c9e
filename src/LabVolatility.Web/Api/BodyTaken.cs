namespace LabVolatility.Web.Api;

/// <summary>The shapes of body that an address takes; one of them, where there are several.</summary>
internal sealed record BodyTaken(IReadOnlyList<Shape> Shapes);
