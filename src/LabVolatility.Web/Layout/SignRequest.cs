using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>What a person is asked to sign.</summary>
/// <param name="Act">The act, as it stands on the button: "Release batch 26-1042".</param>
/// <param name="Meaning">The meaning of the signature in full: it goes into the record.</param>
/// <param name="Consequences">What will happen, a sentence each.</param>
/// <param name="ReasonLabel">What the reason is called, or null where none is asked: "Reason for the hold".</param>
/// <param name="ReasonIsDue">False where the reason may be left empty.</param>
/// <param name="Grave">True for acts that refuse or take back: drawn so.</param>
/// <param name="Reason">The reason to begin with; the person may say it otherwise.</param>
/// <param name="Fields">What else is asked, below the reason; the one who asks reads it.</param>
public sealed record SignRequest(
    string Act, string Meaning, IReadOnlyList<string> Consequences, string? ReasonLabel = null, bool ReasonIsDue = true, bool Grave = false,
    string? Reason = null, RenderFragment? Fields = null);
