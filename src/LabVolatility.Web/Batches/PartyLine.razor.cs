using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>One result of another party, and how it stands beside ours.</summary>
public sealed partial class PartyLine : ComponentBase
{
    private bool _open;
    private string? _reason;

    [Parameter, EditorRequired]
    public PartyEvidence Party { get; set; } = null!;

    [Parameter]
    public bool MayWithdraw { get; set; }

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<(Guid Result, string? Reason)> Withdrawn { get; set; }

    private string Id => $"withdraw-{Party.Id:N}";
}
