using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>One batch: what may happen to it, and the proof.</summary>
public sealed partial class BatchPage : LabPage
{
    private BatchSheet? _sheet;
    private BatchChoices _choices = new([], [], []);
    private BatchEntry? _entry;
    private Guid _version;
    private IReadOnlyList<Problem> _problems = [];
    private string? _said;
    private string? _shown;
    private bool _busy;
    private SignDialog _dialog = null!;

    public override string Title => $"Batch {Number}";

    [Parameter]
    public string Number { get; set; } = "";

    [Inject]
    private ReadBatch Read { get; set; } = null!;

    [Inject]
    private ReadBatchChoices ReadChoices { get; set; } = null!;

    [Inject]
    private RegisterBatch Register { get; set; } = null!;

    [Inject]
    private Decide Decide { get; set; } = null!;

    [Inject]
    private IssueCertificate Issue { get; set; } = null!;

    [Inject]
    private PasswordSignature Signed { get; set; } = null!;

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        if (_shown != Number)
            (_shown, _entry, _said, _problems) = (Number, null, null, []);
        _sheet = await Read.Run(Number, cancellationToken);
        Missing = _sheet is null ? $"There is no batch {Number}." : null;
    }

    private static string Lead(BatchSheet sheet) => string.Join(" · ", new[]
    {
        sheet.Evidence.GradeName,
        sheet.Batch.TankCode is { } tank ? $"tank {tank}" : null,
        sheet.Batch.CubicMetres is { } volume ? $"{Rounding.Plain(volume)} m³" : null,
        BatchWords.Of(sheet.Batch.State),
    }.OfType<string>());

    private async Task BeginChangeAsync()
    {
        _choices = await ReadChoices.Run(Leaving);
        (_entry, _version, _problems, _said) = (BatchEntry.Of(_sheet!.Batch, Clock), _sheet.Batch.Version, [], null);
    }

    private async Task ChangeAsync()
    {
        if (_busy || _entry is null)
            return;
        var (request, unread) = _entry.Read(Clock);
        if (unread.Count > 0)
            _problems = unread;
        else if (await SaveAsync(_version, request with { Number = null, Grade = null }))
            _entry = null;
    }

    private Task EnterEthanolAsync(BatchEntry entry)
    {
        var (request, unread) = entry.Read(Clock);
        _problems = unread;
        return unread.Count > 0 ? Task.CompletedTask : SaveAsync(_sheet!.Batch.Version, request with { Number = null, Grade = null });
    }

    private async Task<bool> SaveAsync(Guid version, BatchRequest request)
    {
        _busy = true;
        var answer = await Register.Change(await ActorNowAsync(), Number, version, request, Leaving);
        (_problems, _said) = (answer.Problems, answer.Ok ? "The change is saved. Limits and outcome below follow it." : null);
        await ReloadAsync();
        _busy = false;
        return answer.Ok;
    }

    private async Task DecideAsync(DecisionKind kind)
    {
        if (_busy || _sheet is not { } sheet)
            return;
        _busy = true;
        _problems = [];
        _said = null;
        // What the signer saw when the dialog opened: a change meanwhile is told, never signed over.
        var request = new DecisionRequest(
            Guid.NewGuid(), Number, kind, sheet.Assessed.InForce?.Sequence ?? 0, sheet.Assessed.EvidenceHash, null, "");
        var done = await _dialog.AskAsync(SignWords.Request(kind, sheet), signature => SignAsync(request, signature));
        if (done && kind is DecisionKind.Release or DecisionKind.Concession)
            await IssueNowAsync();
        await ReloadAsync();
        _busy = false;
    }

    private async Task<string?> SignAsync(DecisionRequest request, Signature signature)
    {
        var answer = await Decide.Run(signature.Actor, request with { Reason = signature.Reason, Password = signature.Password }, Leaving);
        if (answer.Kind == AnswerKind.Conflict)
            await ReloadAsync();
        if (answer.Ok)
            _said = $"Batch {Number}: {SignWords.Done(request.Kind)}.";
        return answer.Ok ? null
            : answer.Problems.Any(p => p.Rule == ISignature.Rule) ? Signed.Problem ?? answer.Text
            : answer.Kind == AnswerKind.Conflict ? $"{answer.Text} Nothing was signed. Cancel and look at the batch as it is now."
            : answer.Text;
    }

    private async Task IssueAsync()
    {
        if (_busy)
            return;
        _busy = true;
        _said = null;
        await IssueNowAsync();
        await ReloadAsync();
        _busy = false;
    }

    private async Task IssueNowAsync()
    {
        var answer = await Issue.Run(await ActorNowAsync(), Number, Leaving);
        _problems = answer.Problems;
        if (answer.Value is { } issued)
            _said = $"{_said} Certificate {issued.Number}, revision {issued.Revision} is issued.".Trim();
    }
}
