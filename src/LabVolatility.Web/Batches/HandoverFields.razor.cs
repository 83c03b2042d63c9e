using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The fields of a hand-over note.</summary>
public sealed partial class HandoverFields : ComponentBase
{
    [Parameter, EditorRequired]
    public HandoverEntry Entry { get; set; } = null!;

    /// <summary>Where it stands on the page: two of them have fields of their own.</summary>
    [Parameter]
    public string Place { get; set; } = "/handover";

    private IReadOnlyList<Problem> Shown => [.. Entry.Problems.Select(p => p with { Field = p.Field.Replace("/handover", Place, StringComparison.Ordinal) })];

    /// <summary>The fields for a dialog of somebody else.</summary>
    public static RenderFragment Of(HandoverEntry entry, string place) => builder =>
    {
        builder.OpenComponent<HandoverFields>(0);
        builder.AddComponentParameter(1, nameof(Entry), entry);
        builder.AddComponentParameter(2, nameof(Place), place);
        builder.CloseComponent();
    };
}
