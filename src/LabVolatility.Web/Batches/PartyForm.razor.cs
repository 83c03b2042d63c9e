using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>Takes another party's result as typed.</summary>
public sealed partial class PartyForm : ComponentBase
{
    private readonly PartyEntry _entry = new();
    private IReadOnlyList<Problem> _unread = [];

    [Parameter, EditorRequired]
    public Evidence Evidence { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<PartyResultRequest> Entered { get; set; }

    [Parameter]
    public EventCallback Left { get; set; }

    private IReadOnlyList<Problem> Shown => _unread.Count > 0 ? _unread : Problems;

    // What our own results are by is the likeliest guess of theirs.
    protected override void OnInitialized()
    {
        if (Evidence.Samples.SelectMany(s => s.Determinations).FirstOrDefault() is { } made)
            _entry.Method = made.Method;
        if (Evidence.Limits.FirstOrDefault(l => l.Value is not null) is { } limit)
            (_entry.Quantity, _entry.Correlation) = (limit.Quantity, limit.Correlation ?? "");
    }

    private Task EnterAsync()
    {
        var request = _entry.Read(Evidence.Batch, out _unread);
        return _unread.Count > 0 ? Task.CompletedTask : Entered.InvokeAsync(request);
    }
}
