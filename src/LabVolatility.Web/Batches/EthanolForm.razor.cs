using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The measured ethanol content, entered by who measures; the rest of the batch is not theirs to change.</summary>
public sealed partial class EthanolForm : ComponentBase
{
    private BatchEntry _entry = new();
    private Guid _version;

    [Parameter, EditorRequired]
    public Batch Batch { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<BatchEntry> Entered { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;

    protected override void OnParametersSet()
    {
        // What was typed stays until the batch itself is another one.
        if (_version == Batch.Version)
            return;
        (_version, _entry) = (Batch.Version, BatchEntry.Of(Batch, Clock));
    }
}
