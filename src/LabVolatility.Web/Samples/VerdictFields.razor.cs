using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Asks what is done with a sample that did not come as it should.</summary>
public sealed partial class VerdictFields : ComponentBase
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ContainerRow> Rows { get; set; } = [];

    [Parameter]
    public ReceiptVerdict Verdict { get; set; }

    [Parameter]
    public EventCallback<ReceiptVerdict> VerdictChanged { get; set; }

    [Parameter]
    public string? Note { get; set; }

    [Parameter]
    public EventCallback<string?> NoteChanged { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    private IReadOnlyList<string> Departures => ContainerRow.Departures(Rows);
}
