namespace LabVolatility.Laboratory.People;

/// <summary>A turn on call as a line of the list.</summary>
public sealed record OnCallLine(Guid Id, string Person, string Phone, DateTimeOffset From, DateTimeOffset Until);
