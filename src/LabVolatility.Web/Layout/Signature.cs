using LabVolatility.Laboratory.People;

namespace LabVolatility.Web.Layout;

/// <summary>A signature given: the password was right a moment ago.</summary>
/// <param name="Actor">Who signed, with the roles held at that moment.</param>
/// <param name="Meaning">The meaning as it was shown.</param>
/// <param name="Reason">The reason as typed, trimmed; null where none was given.</param>
/// <param name="At">When.</param>
public sealed record Signature(Actor Actor, string Meaning, string? Reason, DateTimeOffset At);
