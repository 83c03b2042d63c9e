using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Receives an announced sample: each container is looked at.</summary>
public sealed partial class ReceiveForm : ComponentBase
{
    private List<ContainerRow> _rows = [];
    private IReadOnlyList<Problem> _wrong = [];
    private ReceiptVerdict _verdict;
    private string? _note;
    private string? _for;
    private string? _drawnAt;
    private string? _drawnBy;

    [Parameter, EditorRequired]
    public SampleSheet Sheet { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Parameter]
    public bool Busy { get; set; }

    /// <summary>Somebody else received it while this was being filled in: it is kept to compare.</summary>
    [Parameter]
    public bool TooLate { get; set; }

    /// <summary>Raised when it needs no comparing any more.</summary>
    [Parameter]
    public EventCallback PutAway { get; set; }

    [Parameter, EditorRequired]
    public EventCallback<ReceiveSample.Request> Received { get; set; }

    [Inject]
    private LabClock Clock { get; set; } = null!;

    // A sample that was called for has yet to say when it was drawn and by whom.
    private bool Called => Sheet.Sample.SampledBy.Length == 0;

    private IReadOnlyList<Problem> Shown => _wrong.Count > 0 ? _wrong : Problems;

    // Once for each sample: a reload keeps what was typed.
    protected override void OnParametersSet()
    {
        if (_for == Sheet.Sample.Number)
            return;
        _for = Sheet.Sample.Number;
        _rows = [.. Sheet.Sample.Containers.OrderBy(c => c.Number).Select(ContainerRow.Of)];
    }

    private Task ReceiveAsync()
    {
        var problems = new List<Problem>();
        var containers = ContainerRow.Read(_rows, problems, received: true);
        var drawn = Called ? DrawnAt(problems) : null;
        _wrong = problems;
        return problems.Count > 0
            ? Task.CompletedTask
            : Received.InvokeAsync(new ReceiveSample.Request(Sheet.Sample.Number, Sheet.Sample.Version, containers, _verdict, _note, drawn, Called ? _drawnBy : null));
    }

    private DateTimeOffset? DrawnAt(List<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(_drawnAt))
            return null;
        if (Clock.TryRead(_drawnAt, out var drawn, out var unread))
            return drawn;
        problems.Add(new Problem("/sampledAt", unread!));
        return null;
    }
}
