namespace LabVolatility.Laboratory.Records;

/// <summary>Who does what, from where and why: what every audit record of one transaction says.</summary>
/// <param name="ActorId">The person's or the key's id; null for the program itself.</param>
/// <param name="Actor">The name as it stands in the record.</param>
/// <param name="Origin">page, interface, command, start or demo.</param>
/// <param name="Name">The act in the words of the trade, such as "report determination".</param>
/// <param name="Reason">Why, where a reason is due.</param>
public sealed record Act(Guid? ActorId, string Actor, string Origin, string Name, string? Reason = null);
