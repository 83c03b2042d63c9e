using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The decisions this person may sign now, and in words what stands against the rest.</summary>
public sealed partial class DecisionBar : ComponentBase
{
    private OfferedDecisions _offered = new([], [], false);

    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<DecisionKind> Asked { get; set; }

    [Parameter]
    public EventCallback IssueAsked { get; set; }

    /// <summary>Only these are shown; null for all.</summary>
    [Parameter]
    public IReadOnlyList<DecisionKind>? Among { get; set; }

    /// <summary>Further buttons, after the decisions.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    private IEnumerable<DecisionKind> Shown => _offered.Kinds.Where(kind => Among?.Contains(kind) != false);

    private bool MayIssue => Sheet.LacksCertificate && Actor.May(Right.Decide);

    protected override void OnParametersSet() => _offered = OfferedDecisions.Of(Sheet, Actor);

    private static string? Look(DecisionKind kind) => kind switch
    {
        DecisionKind.Release or DecisionKind.Concession => "main",
        DecisionKind.Reject or DecisionKind.Withdraw => "grave",
        _ => null,
    };
}
