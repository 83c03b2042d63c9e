using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>The measured ethanol content, entered by who measures; the rest of the batch is not theirs to change.</summary>
public sealed partial class EthanolForm : ComponentBase
{
    private BatchEntry _entry = new();
    private (string?, string?) _filled;
    private Guid _version;
    private string? _meanwhile;

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

    private static string Words(BatchEntry entry) =>
        string.IsNullOrWhiteSpace(entry.Ethanol) ? "empty" : $"{entry.Ethanol} % by {(string.IsNullOrWhiteSpace(entry.EthanolMethod) ? "no method" : entry.EthanolMethod)}";

    protected override void OnParametersSet()
    {
        if (_version == Batch.Version)
            return;
        var now = BatchEntry.Of(Batch, Clock);
        var typed = (_entry.Ethanol, _entry.EthanolMethod);
        // What was typed stays, and the person is told what stands there now; what is the same is no news.
        var keeps = _version != Guid.Empty && typed != _filled && typed != (now.Ethanol, now.EthanolMethod);
        _meanwhile = keeps ? $"The batch was changed meanwhile. Its ethanol content is {Words(now)} now; you typed {Words(_entry)}." : null;
        _version = Batch.Version;
        if (!keeps)
            (_entry, _filled) = (now, (now.Ethanol, now.EthanolMethod));
    }
}
