using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Registers or announces a sample.</summary>
public sealed partial class NewSamplePage : LabPage
{
    private readonly Guid _command = Guid.NewGuid();
    private readonly List<ContainerRow> _rows = [new(), new()];
    private SampleChoices _choices = new([], [], [], []);
    private IReadOnlyList<Problem> _problems = [];
    private bool _here = true;
    private bool _busy;
    private bool _begun;
    private string? _grade;
    private string? _batch;
    private string? _tank;
    private string? _point;
    private SampleLevel _level = SampleLevel.Running;
    private string? _sampledAt;
    private string? _sampledBy;
    private string? _note;
    private ReceiptVerdict _verdict;
    private string? _verdictNote;

    public override string Title => "New sample";

    public override Right Needs => Right.RegisterSamples;

    /// <summary>The batch that a batch's page sends along.</summary>
    [SupplyParameterFromQuery(Name = "batch")]
    private string? ForBatch { get; set; }

    [Inject]
    private ReadSampleChoices Read { get; set; } = null!;

    [Inject]
    private RegisterSample Register { get; set; } = null!;

    protected override bool Concerns(Notice notice) =>
        notice.Changes<Batch>() || notice.Changes<Tank>() || notice.Changes<SamplePoint>() || notice.Changes<Grade>();

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _choices = await Read.Run(cancellationToken);
        if (_begun)
            return;
        _begun = true;
        _batch = ForBatch;
        TakeBatch();
    }

    private void TakeBatch()
    {
        if (_choices.Batches.FirstOrDefault(b => b.Number == _batch) is not { } batch)
            return;
        _grade = batch.Grade;
        _tank = batch.Tank ?? _tank;
    }

    private async Task RegisterAsync()
    {
        if (_busy)
            return;
        _busy = true;
        var problems = new List<Problem>();
        DateTimeOffset? sampledAt = null;
        if (Clock.TryRead(_sampledAt, out var at, out var wrong))
            sampledAt = at;
        else
            problems.Add(new Problem("/sampledAt", wrong!));
        var containers = ContainerRow.Read(_rows, problems, _here);
        if (problems.Count > 0)
        {
            _problems = problems;
            _busy = false;
            return;
        }

        var answer = await Register.Run(await ActorNowAsync(), new SampleRequest
        {
            CommandId = _command,
            Grade = _grade,
            Batch = Blank(_batch),
            SamplePoint = Blank(_point),
            Tank = Blank(_tank),
            Level = _level,
            SampledAt = sampledAt,
            SampledBy = _sampledBy,
            ReceivedAt = _here ? Clock.Now.ToUniversalTime() : null,
            Containers = containers,
            Note = Blank(_note),
            Verdict = _here ? _verdict : ReceiptVerdict.AsExpected,
            VerdictNote = _here ? Blank(_verdictNote) : null,
        }, Leaving);
        _problems = answer.Problems;
        _busy = false;
        if (answer.Ok)
            Addresses.NavigateTo($"/samples/{answer.Value}?new=yes");
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
