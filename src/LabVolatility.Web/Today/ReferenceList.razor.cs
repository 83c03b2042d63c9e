using LabVolatility.Laboratory.Today;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Today;

/// <summary>Drafts of reference data, and what is still from memory.</summary>
public sealed partial class ReferenceList : ComponentBase
{
    [Parameter, EditorRequired]
    public ReferenceWork Work { get; set; } = null!;

    private static string Address(ReferenceDraft draft) => draft.What == "precision"
        ? $"/methods/{Uri.EscapeDataString(draft.Place.Replace(' ', '-'))}"
        : $"/limits/{Uri.EscapeDataString(draft.Place)}";
}
