namespace LabVolatility.Laboratory.People;

/// <summary>What one node tells the others of the people at its pages.</summary>
internal sealed record PresenceMessage(Guid Node, IReadOnlyList<PresentPerson> Here, IReadOnlyList<Guid> Gone);
