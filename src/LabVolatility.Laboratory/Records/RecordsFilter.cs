namespace LabVolatility.Laboratory.Records;

/// <summary>Which audit records are asked for; null asks for all.</summary>
/// <param name="Text">Found in act, actor, subject's id, reason, or the state after; upper and lower case alike.</param>
/// <param name="Subject">Such as "sample" or "decision".</param>
/// <param name="SubjectId">The thing's id or code.</param>
/// <param name="ActorId">Who did it.</param>
/// <param name="From">First instant, included.</param>
/// <param name="Until">Last instant, excluded.</param>
public sealed record RecordsFilter(
    string? Text = null, string? Subject = null, string? SubjectId = null, Guid? ActorId = null, DateTimeOffset? From = null, DateTimeOffset? Until = null);
