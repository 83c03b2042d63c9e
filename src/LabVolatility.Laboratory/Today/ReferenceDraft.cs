namespace LabVolatility.Laboratory.Today;

/// <summary>A draft of reference data.</summary>
/// <param name="What">"limit", "area" or "precision".</param>
/// <param name="Name">Key, code or method.</param>
/// <param name="Place">The area's code or the method's designation: what its page is called by.</param>
/// <param name="By">Who drafted it.</param>
/// <param name="At">When.</param>
/// <param name="Own">True where the person who asks drafted it: somebody else approves it.</param>
public sealed record ReferenceDraft(string What, string Name, string Place, string By, DateTimeOffset At, bool Own);
